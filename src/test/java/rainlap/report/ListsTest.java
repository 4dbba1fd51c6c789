package rainlap.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.building.Building;
import rainlap.check.BuildingChecker;
import rainlap.check.BuildingResult;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.check.Rules;
import rainlap.file.BuildingFile;
import rainlap.file.ElevationFile;
import rainlap.joint.Joint;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.Place;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The lists, read back by others and held against the findings file, value by value. */
class ListsTest {
    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private static byte[] bytes(Writing writing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(out);
        return out.toByteArray();
    }

    private static List<List<String>> csv(Writing writing) throws IOException {
        return ReadCsv.of(new String(bytes(writing), StandardCharsets.UTF_8));
    }

    private static List<Map<String, String>> rows(List<List<String>> table) {
        return table.stream().skip(1).map(row -> {
            assertEquals(table.get(0).size(), row.size());
            Map<String, String> out = new TreeMap<>();
            for (int c = 0; c < row.size(); c++) {
                out.put(table.get(0).get(c), row.get(c));
            }
            return out;
        }).toList();
    }

    private static CheckResult shipped(String name) {
        Elevation e = ElevationFile.read(Path.of("elevations", name + ".json")).elevation().orElseThrow();
        return Checker.check(e, Stage.FINISHED, Practices.find(e.practice().orElseThrow()).orElseThrow());
    }

    private static BuildingResult building() {
        Building b = BuildingFile.read(Path.of("elevations/buildings/estuary-hut.json")).building().orElseThrow();
        return BuildingChecker.check(b, Stage.WRAP, e -> Practices.find(e.practice().orElseThrow()).orElseThrow(), Rules.all(), 1);
    }

    @Test void everyValueOfAnElevationIsThatOfTheFindingsFile() throws IOException {
        int points = 0, joints = 0;
        for (String name : List.of("estuary-hut-north", "bakery-trailer-left", "ferry-kiosk-front")) {
            CheckResult result = shipped(name);
            String wall = result.evidence().elevation().name();
            List<Map<String, String>> expectedPoints = new ArrayList<>(), expectedJoints = new ArrayList<>();
            expect(wall, result, expectedPoints, expectedJoints);
            agree(Lists.of(result), expectedPoints, expectedJoints);
            points += expectedPoints.size();
            joints += expectedJoints.size();
        }
        assertTrue(points > 10 && joints > 50, points + " weak points, " + joints + " joints");
    }

    @Test void aBuildingIsOneListWithTheWallOfEachRow() throws IOException {
        BuildingResult result = building();
        List<Map<String, String>> points = new ArrayList<>(), joints = new ArrayList<>();
        for (BuildingResult.OneWall w : result.walls()) {
            expect(w.wall().id(), w.result(), points, joints);
        }
        points.sort(java.util.Comparator.comparingInt(m -> Integer.parseInt(m.get("weak point"))));
        agree(Lists.of(result), points, joints);
        assertTrue(points.stream().map(m -> m.get("wall")).distinct().count() > 1);
        String notes = ReadXlsx.of(bytes(Lists.of(result)::writeWorkbook)).get("Notes").toString();
        assertTrue(notes.contains("west") && notes.contains("not checked, ") && notes.contains("does not certify"), notes);
    }

    private static void agree(Lists lists, List<Map<String, String>> points, List<Map<String, String>> joints) throws IOException {
        assertEquals(points, rows(csv(lists::writeWeakPoints)));
        assertEquals(joints, rows(csv(lists::writeJoints)));
        Map<String, List<List<String>>> book = ReadXlsx.of(bytes(lists::writeWorkbook));
        assertEquals(List.of("Weak points", "Joints", "Notes"), List.copyOf(book.keySet()));
        assertEquals(csv(lists::writeWeakPoints), book.get("Weak points"));
        assertEquals(csv(lists::writeJoints), book.get("Joints"));
    }

    /** What the lists must say by the findings file, and by the place in words, which that has not. */
    private static void expect(String wall, CheckResult result, List<Map<String, String>> points, List<Map<String, String>> joints) throws IOException {
        JsonNode file = new ObjectMapper().readTree(FindingsJsonTest.bytes(result));
        for (int i = 0; i < result.weakPoints().size(); i++) {
            points.add(point(wall, file.at("/weak_points/" + i), result.weakPoints().get(i).finding()));
        }
        List<Joint> all = result.evidence().joints().all();
        for (int i = 0; i < all.size(); i++) {
            Place place = Place.line(result.evidence().elevation(), all.get(i).surface(), all.get(i).line());
            joints.add(joint(wall, file.at("/joints/" + i), all.get(i), place));
        }
    }

    private static Map<String, String> point(String wall, JsonNode f, Finding finding) {
        Map<String, String> out = new TreeMap<>();
        out.put("weak point", f.get("number").toString());
        out.put("wall", wall);
        out.put("defences (3: or more)", f.get("defences").toString());
        out.put("litres per hour", text(f.get("litres_per_hour")));
        for (String key : List.of("rule", "title", "surface", "measured", "required", "unit", "drawn", "asked", "says", "remedy", "joint")) {
            out.put(key, text(f.get(key)));
        }
        out.put("pieces", joined(f.get("pieces")));
        out.put("place", "at " + finding.where().inWords());
        out.put("practice that asks", text(f.get("spoken_by")));
        for (String key : List.of("document", "edition", "clause", "known")) {
            out.put(key, f.get("source").get(key).asText());
        }
        where(f.get("where").asText(), out);
        return out;
    }

    private static Map<String, String> joint(String wall, JsonNode f, Joint joint, Place place) {
        Map<String, String> out = new TreeMap<>();
        out.put("wall", wall);
        out.put("joint", text(f.get("id")));
        out.put("kind", text(f.get("kind")));
        out.put("outer piece", f.at("/pieces/0").asText());
        out.put("inner piece", f.at("/pieces/1").asText());
        out.put("place", "at " + place.inWords());
        out.put("surface", text(f.get("surface")));
        boolean lap = f.get("kind").asText().endsWith("lap"), taped = !f.get("tape").isNull();
        out.put("lap mm", lap ? f.get("lap").toString() : "");
        out.put("gap mm", lap ? "" : f.get("gap").toString());
        out.put("sealed by its own adhesive", f.get("sealed").asBoolean() ? "yes" : "no");
        out.put("taped", !taped ? "no" : f.get("uncovered").isEmpty() ? "yes" : "in part");
        out.put("tape on outer mm", taped ? f.at("/tape/0").toString() : "");
        out.put("tape on inner mm", taped ? f.at("/tape/1").toString() : "");
        out.put("litres per hour", text(f.get("litres_per_hour")));
        out.put("length mm", java.math.BigDecimal.valueOf(Math.round(joint.lengthMm() * 100), 2).stripTrailingZeros().toPlainString());
        where(f.get("where").asText(), out);
        return out;
    }

    /** The text of a value, numbers as they stand in the file, nothing for null. */
    private static String text(JsonNode value) {
        return value.isNull() ? "" : value.isNumber() ? value.toString() : value.asText();
    }

    private static String joined(JsonNode list) {
        List<String> out = new ArrayList<>();
        list.forEach(n -> out.add(n.asText()));
        return String.join(", ", out);
    }

    /** The least and greatest of the well-known text's coordinates. */
    private static void where(String wkt, Map<String, String> out) {
        List<String> numbers = Pattern.compile("-?[0-9.]+").matcher(wkt).results().map(m -> m.group()).toList();
        String[] names = {"x", "level"};
        for (int axis = 0; axis < 2; axis++) {
            int of = axis;
            List<java.math.BigDecimal> all = Stream.iterate(of, i -> i < numbers.size(), i -> i + 2).map(i -> new java.math.BigDecimal(numbers.get(i))).sorted().toList();
            out.put(names[axis] + " from mm", all.get(0).toPlainString());
            out.put(names[axis] + " to mm", all.get(all.size() - 1).toPlainString());
        }
        out.put("geometry (WKT, mm)", wkt);
    }

    @Test void whatASpreadsheetWouldRunIsText() throws IOException {
        String wall = """
                { "rainlap": 1, "name": "@x", "practice": "au-abcb-2022",
                  "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "free", "eave", "free"] },
                  "pieces": [
                    { "id": "=1+1", "material": "foil-membrane", "rect": [-200, 0, 3200, 1350] },
                    { "id": "-2", "material": "foil-membrane", "rect": [-200, 1300, 3200, 1350] } ] }
                """;
        var reading = ElevationFile.read("formula.json", wall.getBytes(StandardCharsets.UTF_8));
        Lists lists = Lists.of(Checker.check(reading.elevation().orElseThrow(() -> new AssertionError(reading.problems())), Stage.WRAP, Practices.common()));
        Map<String, List<List<String>>> book = ReadXlsx.of(bytes(lists::writeWorkbook));
        List<Map<String, String>> joints = rows(csv(lists::writeJoints));
        assertEquals(joints, rows(book.get("Joints")));
        Map<String, String> joint = joints.get(0);
        assertEquals("'@x", joint.get("wall"));
        assertEquals("'-2", joint.get("outer piece"));
        assertEquals("'=1+1", joint.get("inner piece"));
        assertTrue(joint.get("joint").startsWith("'-2/=1+1:"), joint.get("joint"));
        assertEquals("-200", joint.get("x from mm"), "a number below 0 stays one, as ReadXlsx tells");
        List<List<String>> everywhere = new ArrayList<>(book.get("Notes"));
        everywhere.addAll(csv(lists::writeWeakPoints));
        everywhere.addAll(csv(lists::writeJoints));
        everywhere.forEach(row -> row.forEach(cell -> assertTrue(!cell.matches("(?s)[=+@\\t\\r\\n].*|-(?![0-9.]+$).*"), cell)));
    }

    @Test void everyStartOfAFormulaIsGuarded() {
        for (String start : List.of("=", "+", "-", "@", "\t", "\r", "\n", "\uff1d", "\uff0b", "\uff0d", "\uff20", " =", "\ufeff=", "\u00a0-", "\u200b@")) {
            assertTrue(Cell.of(start + "1").text().startsWith("'"), start);
        }
        for (String harmless : List.of("M1", "1-1", "a=b", "\u22125", "'x", "", " x")) {
            assertEquals(harmless, Cell.of(harmless).text());
        }
        assertEquals("'=a\ufffdb", Cell.of("=a\tb").text(), "no control character is passed on");
        assertEquals("-2.5", Cell.of(OptionalDouble.of(-2.5)).number().orElseThrow().toString());
        assertEquals("100000", Cell.mm(10_000_000).number().orElseThrow().toString(), "never with an exponent");
    }

    @Test void quotesCommasAndBlanksComeBackAsTheyWere() throws IOException {
        List<String> cells = List.of("a,b", "say \"so\"", " blank ", "", "\"", "a;b", "größer ≥ 150");
        ListTable table = new ListTable("t", List.of(new ListTable.Heading("one, \"two\"", 5)), cells.stream().map(c -> List.of(Cell.of(c))).toList());
        List<List<String>> back = csv(out -> Csv.write(table, out));
        assertEquals("one, \"two\"", back.get(0).get(0));
        assertEquals(cells, back.stream().skip(1).map(r -> r.get(0)).toList());
    }

    /** A cell of a workbook holds no more than 32,767 characters. */
    @Test void aTextThatIsTooLongForACellSaysSo() throws IOException {
        ListTable table = new ListTable("t", List.of(new ListTable.Heading("h", 5)), List.of(List.of(Cell.of("x".repeat(40_000)))));
        String cell = ReadXlsx.of(bytes(out -> Xlsx.write(List.of(table), out))).get("t").get(1).get(0);
        assertEquals(32_767, cell.length());
        assertTrue(cell.endsWith("the findings file has all of it"), "cut in silence");
    }

    @Test void aWallWithoutWeakPointsHasEmptyLists() throws IOException {
        Lists lists = Lists.of(Samples.sound());
        assertEquals(1, csv(lists::writeWeakPoints).size(), "the headings alone");
        assertEquals(1, ReadXlsx.of(bytes(lists::writeWorkbook)).get("Weak points").size());
    }

    @Test void sameResultSameBytesInAnyTimeZone() throws IOException, InterruptedException {
        TimeZone zone = TimeZone.getDefault();
        Map<String, byte[]> books = new LinkedHashMap<>();
        try {
            for (String place : List.of("UTC", "Pacific/Auckland", "America/New_York")) {
                TimeZone.setDefault(TimeZone.getTimeZone(place));
                books.put(place, bytes(Lists.of(Samples.mixed())::writeWorkbook));
                Thread.sleep(1100);
            }
        } finally {
            TimeZone.setDefault(zone);
        }
        books.values().forEach(b -> assertArrayEquals(books.get("UTC"), b));
        assertArrayEquals(bytes(Lists.of(Samples.mixed())::writeWeakPoints), bytes(Lists.of(Samples.mixed())::writeWeakPoints));
    }

    @Test void theMarksOfOurFilesAreWhereTheyAreLookedFor() throws IOException {
        Lists lists = Lists.of(Samples.mixed());
        assertTrue(new String(bytes(lists::writeWeakPoints), StandardCharsets.UTF_8).startsWith(Lists.firstLines().get(0)));
        assertTrue(new String(bytes(lists::writeJoints), StandardCharsets.UTF_8).startsWith(Lists.firstLines().get(1)));
        assertTrue(new String(bytes(lists::writeWorkbook), StandardCharsets.ISO_8859_1).endsWith(Lists.WORKBOOK_END));
    }
}
