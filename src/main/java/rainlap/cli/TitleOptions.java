package rainlap.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.Option;
import rainlap.drawing.TitleBlock;

/** What the title block says that no elevation holds. */
final class TitleOptions {
    private static final int MOST = 100;
    private static final int HASH_DIGITS = 8;

    @Option(names = "--owner", paramLabel = "TEXT", description = "Legal owner.")
    String owner = "";

    @Option(names = "--id", paramLabel = "TEXT", description = "Identification number of the drawing.")
    String id = "";

    @Option(names = "--date", paramLabel = "DATE", description = "Date of issue, like 2026-03-31; never today's by itself.")
    String date = "";

    @Option(names = "--revision", paramLabel = "TEXT", description = "Revision letter or number.")
    String revision = "";

    @Option(names = "--drawn-by", paramLabel = "TEXT", description = "Who drew it up.")
    String drawnBy = "";

    /** Refuses what cannot stand in a title block. */
    void check() {
        for (String text : new String[] {owner, id, revision, drawnBy}) {
            if (text.length() > MOST) {
                throw Refusal.usage("a text for the title block has more than " + MOST + " characters", "shorten " + Suggestion.quoted(text));
            }
        }
        try {
            if (!date.isEmpty()) {
                LocalDate.parse(date);
            }
        } catch (DateTimeParseException e) {
            throw Refusal.usage(Suggestion.quoted(date) + " is no date", "write year, month and day, like 2026-03-31");
        }
    }

    /** @param sha256 of the input file */
    TitleBlock block(String sha256) {
        String hash = sha256.substring(0, Math.min(HASH_DIGITS, sha256.length()));
        return new TitleBlock(owner, id, date, revision, drawnBy, "", hash);
    }
}
