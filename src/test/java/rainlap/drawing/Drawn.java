package rainlap.drawing;

import java.lang.ref.SoftReference;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import rainlap.check.CheckResult;
import rainlap.paper.Sheet;

/** Sheets of results that many tests look at, drawn once for all of them as long as there is room. */
public final class Drawn {
    private static final Map<CheckResult, Map<Sheets.Paper, SoftReference<List<Sheet>>>> KNOWN = new IdentityHashMap<>();

    private Drawn() {}

    public static List<Sheet> of(CheckResult result) {
        return of(result, Sheets.Paper.A3);
    }

    static synchronized List<Sheet> of(CheckResult result, Sheets.Paper paper) {
        Map<Sheets.Paper, SoftReference<List<Sheet>>> known = KNOWN.computeIfAbsent(result, r -> new EnumMap<>(Sheets.Paper.class));
        List<Sheet> sheets = known.containsKey(paper) ? known.get(paper).get() : null;
        if (sheets == null) {
            sheets = List.copyOf(Sheets.of(result, TitleBlock.BLANK, paper));
            known.put(paper, new SoftReference<>(sheets));
        }
        return sheets;
    }
}
