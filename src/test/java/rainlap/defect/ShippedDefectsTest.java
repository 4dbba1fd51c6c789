package rainlap.defect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.file.ElevationFile;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.Bond;
import rainlap.practice.Practices;
import rainlap.report.DefectTable;
import rainlap.rule.Evidence;
import rainlap.stack.Crew;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Piece;
import rainlap.wall.Stage;
import rainlap.wall.Surface;
import rainlap.water.Reach;
import rainlap.water.Trace;

/** The walls that ship: their tables as accepted, and each hole against the whole wall traced with and without it. */
class ShippedDefectsTest {
    private static final Path GOLDEN = Path.of("src/test/resources/defects/shipped-walls.txt");

    private static List<Path> walls() throws IOException {
        try (Stream<Path> all = Files.list(Path.of("elevations"))) {
            return all.filter(p -> p.toString().endsWith(".json")).sorted().toList();
        }
    }

    /** At both stages, or once where no cavity and face are drawn and both see the same. */
    private static List<Evidence> evidence(Path file) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        boolean differs = e.pieces().stream().anyMatch(p -> !Stage.WRAP.sees(p.material().layer()));
        return (differs ? List.of(Stage.WRAP, Stage.FINISHED) : List.of(Stage.WRAP)).stream()
                .map(s -> Evidence.of(e, s, Practices.find(e.practice().orElse(Practices.COMMON)).orElseThrow())).toList();
    }

    @Test
    void tablesAreAsAccepted() throws IOException {
        List<String> lines = new ArrayList<>();
        for (Path wall : walls()) {
            for (Evidence e : evidence(wall)) {
                lines.add("== " + wall.getFileName() + ", " + e.stack().stage().word());
                lines.addAll(DefectTable.lines(Study.of(e)));
            }
        }
        assertEquals(List.of(), lines.stream().filter(l -> l.length() > 100).toList());
        String text = String.join("\n", lines) + "\n";
        if ("accept".equals(System.getProperty("golden"))) {
            Files.writeString(GOLDEN, text, StandardCharsets.UTF_8);
        }
        assertEquals(Files.readString(GOLDEN, StandardCharsets.UTF_8), text, "look at what changed; accept with -Dgolden=accept");
    }

    /** Rain on the whole wall, traced with the hole and without it: the frame gets wetter only where the study says so, and always where it says so and it was dry. */
    @Test
    void theWholeWallGetsWetterOnlyByHolesThatReachTheFrame() throws IOException {
        List<String> wrong = new ArrayList<>();
        int reached = 0, dry = 0;
        for (Path wall : walls()) {
            for (Evidence e : evidence(wall)) {
                Map<String, Map<Surface, List<Region>>> asDrawn = new HashMap<>();
                for (Study.Followed f : Study.of(e).holes()) {
                    for (Result r : f.results()) {
                        boolean wetter = isWetter(e, f.hole(), r.pressure(), asDrawn);
                        reached += wetter ? 1 : 0;
                        dry += wetter ? 0 : 1;
                        if (wetter && r.frame().isEmpty() || !wetter && r.frame().isPresent() && !r.asDrawn()) {
                            wrong.add(wall.getFileName() + " " + e.stack().stage().word() + " hole " + f.number() + " " + r.pressure().name() + (wetter ? " wets more" : " wets no more"));
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(reached > 10 && dry > 100, reached + " holes wet the frame, " + dry + " do not");
    }

    private static boolean isWetter(Evidence e, Hole hole, Pressure p, Map<String, Map<Surface, List<Region>>> asDrawn) {
        boolean isLoosened = !hole.piece().bond().isFull() && !hole.piece().bond().isLoose();
        Map<Surface, List<Region>> before = asDrawn.computeIfAbsent(p.name() + (isLoosened ? hole.piece().id() : ""),
                k -> wet(loosened(e.elevation(), hole.piece()), e.stack().stage(), p));
        Map<Surface, List<Region>> after = wet(Cutting.of(e.elevation(), hole), e.stack().stage(), p);
        return after.entrySet().stream().anyMatch(a -> area(Overlay.difference(a.getValue(), before.getOrDefault(a.getKey(), List.of()))) > 0.01);
    }

    /** The wall without the hole, but what is sealed along some edges is loose, as it is with the hole. */
    private static Elevation loosened(Elevation e, Piece cut) {
        Bond bond = cut.bond().isFull() ? Bond.FULL : Bond.LOOSE;
        return e.withPieces(e.pieces().stream().map(q -> q.id().equals(cut.id())
                ? new Piece(q.id(), q.material(), q.shapes(), q.under(), bond, q.cuts()) : q).toList());
    }

    private static Map<Surface, List<Region>> wet(Elevation wall, Stage stage, Pressure p) {
        Stack stack = Stack.of(wall, stage);
        Map<Surface, List<Region>> out = new HashMap<>();
        for (Reach r : Trace.of(stack, p.drive(), Optional.empty(), Crew.ALONE).reach()) {
            if (r.defences() == 0) {
                out.put(r.surface(), r.where());
            }
        }
        return out;
    }

    private static double area(List<Region> regions) {
        return regions.stream().mapToDouble(Region::areaMm2).sum();
    }
}
