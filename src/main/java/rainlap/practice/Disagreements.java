package rainlap.practice;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import rainlap.source.Known;

/** What documents disagree on: {@code /disagreements.json}, which is our own, so that any fault in it stops the program. */
public final class Disagreements {
    private static final String FILE = "/disagreements.json";
    private static final JsonMapper MAPPER = JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).build();

    private Disagreements() {}

    /** Either {@code limit} or {@code says}. */
    private record Entry(String about, String limit, List<Side> says, String comment) {}

    private record Side(String who, String what, String known) {}

    private static final class Shipped {
        static final List<Disagreement> ALL = read();
    }

    /** All of them, in the order of their file. */
    public static List<Disagreement> all() {
        return Shipped.ALL;
    }

    private static List<Disagreement> read() {
        try (InputStream in = Disagreements.class.getResourceAsStream(FILE)) {
            return List.of(MAPPER.readValue(in, Entry[].class)).stream().map(Disagreements::read).toList();
        } catch (IOException e) {
            throw new IllegalStateException(FILE + " cannot be read", e);
        }
    }

    private static Disagreement read(Entry e) {
        if (e.limit() == null) {
            return new Disagreement(e.about(), Optional.empty(), e.says().stream().map(Disagreements::side).toList(), e.comment());
        }
        if (e.says() != null) {
            throw new IllegalArgumentException(e.about() + ": the practices speak for themselves");
        }
        return Disagreement.of(e.about(), Limit.find(e.limit()).orElseThrow(), e.comment(), Practices.all());
    }

    private static Disagreement.Says side(Side s) {
        return new Disagreement.Says(s.who(), s.what(), Known.find(s.known()).orElseThrow());
    }
}
