package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.drawing.Drawn;
import rainlap.file.ElevationFile;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SvgWriter;
import rainlap.wall.Elevation;

/**
 * The sheets of every shipped wall, as text. A sheet that changed is laid beside the old one in {@code target/golden/index.html}, to look
 * at; {@code mvn test -Dtest=GoldenTest -Dgolden=accept} accepts. The embedded fonts stand in the goldens as their length only.
 */
class GoldenTest {
    private static final Path GOLDEN = Path.of("src/test/resources/golden"), CHANGED = Path.of("target/golden");
    private static final Pattern FONT = Pattern.compile("base64,[A-Za-z0-9+/=]+");

    @Test
    void sheetsOfShippedWallsAreAsAccepted() throws IOException {
        Map<String, String> now = new TreeMap<>();
        for (Path wall : walls()) {
            List<Sheet> sheets = sheets(wall);
            for (int i = 0; i < sheets.size(); i++) {
                now.put(name(wall, i), svg(sheets.get(i)));
            }
        }
        if ("accept".equals(System.getProperty("golden"))) {
            Generated.folder(GOLDEN, ".svg", withoutFonts(now));
            return;
        }
        List<String> changed = now.keySet().stream().filter(n -> !accepted(n).equals(withoutFont(now.get(n)))).toList();
        if (!changed.isEmpty()) {
            show(changed, now);
            fail("look at " + CHANGED.resolve("index.html") + ", then accept with -Dgolden=accept: " + changed);
        }
        try (Stream<Path> files = Files.list(GOLDEN)) {
            assertEquals(List.copyOf(now.keySet()), files.map(p -> p.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void sheetsOfShippedWallsKeepTheRulesOfDrawing() throws IOException {
        for (Path wall : walls()) {
            for (Sheet s : sheets(wall)) {
                assertEquals(List.of(), SheetCheck.of(s), wall.toString());
            }
        }
    }

    private static List<Path> walls() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            List<Path> walls = files.filter(p -> p.toString().endsWith(".json")).sorted().toList();
            assertTrue(walls.size() > 1, "no walls");
            return walls;
        }
    }

    private static List<Sheet> sheets(Path wall) throws IOException {
        Elevation e = ElevationFile.read(wall).elevation().orElseThrow();
        return Drawn.of(Shipped.checked(wall, e, Shipped.stage(e)));
    }

    private static String name(Path wall, int sheet) {
        return wall.getFileName().toString().replace(".json", sheet == 0 ? ".svg" : "-" + (sheet + 1) + ".svg");
    }

    private static String svg(Sheet sheet) throws IOException {
        StringWriter out = new StringWriter();
        SvgWriter.write(sheet, out);
        return out.toString();
    }

    private static Map<String, String> withoutFonts(Map<String, String> sheets) {
        Map<String, String> out = new TreeMap<>();
        sheets.forEach((n, s) -> out.put(n, withoutFont(s)));
        return out;
    }

    private static String withoutFont(String svg) {
        return FONT.matcher(svg).replaceAll(m -> "base64,length-" + m.group().length());
    }

    private static String accepted(String name) {
        try {
            return Files.exists(GOLDEN.resolve(name)) ? Files.readString(GOLDEN.resolve(name)) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void show(List<String> changed, Map<String, String> now) throws IOException {
        Files.createDirectories(CHANGED);
        List<String> page = new ArrayList<>(List.of("<!doctype html><meta charset=utf-8><title>Changed sheets</title>"));
        for (String n : changed) {
            Files.writeString(CHANGED.resolve(n), now.get(n));
            Files.writeString(CHANGED.resolve("old-" + n), accepted(n));
            page.add("<h2>" + n + "</h2><img width=49% src='old-" + n + "' alt=old><img width=49% src='" + n + "' alt=new>");
        }
        Files.writeString(CHANGED.resolve("index.html"), String.join("\n", page));
    }
}
