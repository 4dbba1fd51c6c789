package rainlap.file;

import java.util.Map;
import java.util.Optional;

/** Where things stand in a file that was read. */
public final class Places {
    private final SourceText source;
    private final Map<String, Integer> pieces;

    Places(SourceText source, Map<String, Integer> pieces) {
        this.source = source;
        this.pieces = pieces;
    }

    /** Where the id of a piece stands. */
    public Optional<Place> ofPiece(String id) {
        return Optional.ofNullable(pieces.get(id)).map(source::place);
    }

    /**
     * Where the value under a JSON pointer (RFC 6901, {@code /pieces/3/under/0}) begins; the file is read again for it, which
     * spares keeping the whole tree.
     */
    public Optional<Place> ofPointer(String pointer) {
        Optional<Value> value = TreeReader.read(source, new Problems(source, Limits.STATED));
        for (String step : pointer.isEmpty() ? new String[0] : pointer.substring(1).split("/", -1)) {
            value = value.flatMap(v -> child(v, step.replace("~1", "/").replace("~0", "~")));
        }
        return value.map(v -> source.place(v.at()));
    }

    private static Optional<Value> child(Value v, String step) {
        if (v instanceof Value.Keys keys) {
            return keys.members().stream().filter(m -> m.name().equals(step)).findFirst().map(Value.Member::value);
        }
        if (v instanceof Value.Items list && step.matches("0|[1-9][0-9]{0,8}")) {
            int i = Integer.parseInt(step);
            return i < list.items().size() ? Optional.of(list.items().get(i)) : Optional.empty();
        }
        return Optional.empty();
    }
}
