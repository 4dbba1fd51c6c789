package rainlap.drawing;

import java.util.Objects;

/**
 * What stands in the title block and is not in the elevation itself. Blank where nobody said it: never made up, never from the clock.
 *
 * @param owner legal owner
 * @param identification number of the document
 * @param date date of issue, ISO 8601
 * @param revision revision letter or number
 * @param creator who drew it up
 * @param status what the sheet is for: "for correction"
 * @param inputHash first hex digits of the input's SHA-256
 */
public record TitleBlock(String owner, String identification, String date, String revision, String creator, String status,
        String inputHash) {

    /** Nothing given. */
    public static final TitleBlock BLANK = new TitleBlock("", "", "", "", "", "", "");

    public TitleBlock {
        Objects.requireNonNull(owner, "owner");
        Objects.requireNonNull(identification, "identification");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(revision, "revision");
        Objects.requireNonNull(creator, "creator");
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(inputHash, "inputHash");
    }

    public TitleBlock withInputHash(String hash) {
        return new TitleBlock(owner, identification, date, revision, creator, status, hash);
    }
}
