package rainlap.drawing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import rainlap.check.CheckResult;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;

final class StressRun {
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0] + "/stress");
        Files.createDirectories(folder);
        Map<String, Integer> kinds = new TreeMap<>();
        int from = Integer.parseInt(System.getProperty("from", "0")), to = Integer.parseInt(System.getProperty("to", "100"));
        int shown = 0;
        for (int seed = from; seed < to; seed++) {
            try {
                long t0 = System.nanoTime();
                CheckResult r = CrowdedWall.of(seed, 80);
                long t1 = System.nanoTime();
                List<Sheet> sheets = Sheets.of(r, SampleWall.TITLE);
                long t2 = System.nanoTime();
                if ((t2 - t1) / 1e6 > 1500) System.out.println("slow " + seed + ": " + (t2 - t1) / 1_000_000 + " ms, weak " + r.weakPoints().size() + " pieces " + r.evidence().elevation().pieces().size());
                int bad = 0;
                for (int i = 0; i < sheets.size(); i++) {
                    for (SheetCheck.Violation v : SheetCheck.of(sheets.get(i))) {
                        bad++;
                        kinds.merge(v.kind().toString(), 1, Integer::sum);
                        if (shown++ < 25) System.out.println(seed + "/" + (i + 1) + " " + v);
                    }
                }
                if (seed < 12) DrawSample.write(sheets, folder, "s" + seed);
            } catch (Exception e) {
                System.out.println("seed " + seed);
                e.printStackTrace(System.out);
                kinds.merge("EXC " + e.getClass().getSimpleName(), 1, Integer::sum);
                if (kinds.size() > 8) break;
            }
        }
        System.out.println(kinds);
    }
}
