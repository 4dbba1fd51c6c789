package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rainlap.check.Rules;

class BuildingCommandTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private void walls() {
        for (String id : List.of("a", "b")) {
            Run.file(folder, id + ".json", """
                    { "rainlap": 1, "name": "Side %s", "exposure": { "rain_mm_h": 20 },
                      "wall": { "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]], "edges": ["base", "external-corner", "eave", "external-corner"] },
                      "pieces": [ { "id": "M1", "material": "foil-membrane", "rect": [%s] } ] }
                    """.formatted(id, id.equals("a") ? "-300, -40, 3600, 2540" : "0, -40, 3300, 2540"));
        }
        Run.file(folder, "hut.json", """
                { "rainlap": 1, "name": "Hut", "closed": false, "elevations": [ { "id": "a", "file": "a.json" }, { "id": "b", "file": "b.json" } ] }
                """);
    }

    @Test void oneListAndSheetsForEachWall() throws IOException {
        walls();
        Run run = Run.in(folder, "check", "hut.json", "--findings", "hut.findings.json");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertEquals(List.of("a.json", "b.json", "hut.findings.json", "hut.json", "rainlap-out/hut-a.svg", "rainlap-out/hut-b.svg", "rainlap-out/hut-index.svg"), Run.tree(folder));
        assertTrue(run.out().startsWith("Hut (hut.json)\n2 elevations round the plan"), run.out());
        assertTrue(run.out().contains("onto b: M1"), run.out());
        assertTrue(run.out().lines().noneMatch(l -> l.length() > 100));
        String sheet = Files.readString(folder.resolve("rainlap-out/hut-b.svg"));
        assertTrue(sheet.contains("a M1"), "what comes round is named on the sheet");
        JsonNode f = JSON.readTree(folder.resolve("hut.findings.json").toFile());
        assertFalse(f.get("weak_points").isEmpty());
        assertEquals(f.at("/weak_points/0/rule"), f.at("/walls/" + (f.at("/weak_points/0/wall").asText().equals("a") ? 0 : 1) + "/result/weak_points/0/rule"));
        assertEquals(ExitStatus.WEAK_POINTS, Run.in(folder, "check", "hut.json", "--strict", "--no-sheet").status());
        assertEquals(run.out(), Run.in(folder, "check", "hut.json", "--findings", "hut.findings.json").out(), "again, over its own files");
    }

    /** With the findings of both shipped buildings; taking out any one key, or adding one, is refused. */
    @Test void findingsHoldToTheirSchema() throws IOException {
        var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                b -> b.schemas(Map.of("urn:rainlap:findings:1", SchemaCommand.text("findings"), "urn:rainlap:building-findings:1", SchemaCommand.text("building-findings"))));
        var schema = registry.getSchema(SchemaLocation.of("urn:rainlap:building-findings:1"));
        for (String name : List.of("estuary-hut", "bakery-trailer")) {
            Path out = folder.resolve(name + ".json");
            assertEquals(ExitStatus.DONE, Run.in(Path.of(""), "check", "elevations/buildings/" + name + ".json", "--no-sheet", "--simulate-defects", "--findings", out.toString()).status());
            JsonNode f = JSON.readTree(out.toFile());
            assertEquals(List.of(), schema.validate(f).stream().map(Object::toString).toList());
            for (String at : List.of("", "/weak_points/0", "/corners/0", "/walls/0", "/walls/0/result")) {
                f.at(at).fieldNames().forEachRemaining(key -> {
                    JsonNode without = f.deepCopy();
                    ((com.fasterxml.jackson.databind.node.ObjectNode) without.at(at)).remove(key);
                    assertFalse(schema.validate(without).isEmpty(), at + " without " + key);
                });
                JsonNode with = f.deepCopy();
                ((com.fasterxml.jackson.databind.node.ObjectNode) with.at(at)).put("surprise", 1);
                assertFalse(schema.validate(with).isEmpty(), at + " with a surprise");
            }
        }
    }

    @Test void aBuildingIsCheckedByItself() {
        walls();
        Run both = Run.in(folder, "check", "a.json", "hut.json");
        assertEquals(ExitStatus.USAGE, both.status());
        assertTrue(both.err().contains("check a building by itself"), both.err());
        Run one = Run.in(folder, "check", "hut.json", "--sheet", "one.svg");
        assertEquals(ExitStatus.USAGE, one.status());
        assertTrue(one.err().contains("{name}"), one.err());
    }

    /** The index is its first page; every sheet of every wall follows. */
    @Test void onePdfHasTheIndexAndTheSheetsOfAllWalls() throws IOException {
        walls();
        Run run = Run.in(folder, "check", "hut.json", "--sheet", "hut.pdf", "--date", "2026-03-31");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertTrue(run.out().endsWith("sheets: " + folder.resolve("hut.pdf") + "\n"), run.out());
        byte[] first = Files.readAllBytes(folder.resolve("hut.pdf"));
        try (PDDocument pdf = Loader.loadPDF(first)) {
            assertEquals(3, pdf.getNumberOfPages());
            PDFTextStripper text = new PDFTextStripper();
            text.setEndPage(1);
            String index = text.getText(pdf);
            for (String words : List.of("Hut: index, worst first", "a: Side a", "b: Side b", ", sheet 2", ", sheet 3", "2026-03-31", "1 / 3")) {
                assertTrue(index.contains(words), words + " in " + index);
            }
            text.setStartPage(3);
            text.setEndPage(3);
            assertTrue(text.getText(pdf).contains("3 / 3"));
        }
        assertEquals(List.of("a.json", "b.json", "hut.json", "hut.pdf"), Run.tree(folder));
        Run.in(folder, "check", "hut.json", "--sheet", "hut.pdf", "--date", "2026-03-31");
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("hut.pdf")), "the same bytes over its own file");
    }

    @Test void theIndexIsNamedAndDrawnLikeTheSheets() throws IOException {
        walls();
        for (String ending : List.of(".png", ".pdf", ".html")) {
            assertEquals(ExitStatus.DONE, Run.in(folder, "check", "hut.json", "--sheet", "{name}" + ending).status());
        }
        assertEquals(List.of("a.json", "b.json", "hut-a.html", "hut-a.pdf", "hut-a.png", "hut-b.html", "hut-b.pdf", "hut-b.png", "hut-index.pdf", "hut-index.png",
                "hut.json", "index.html"), Run.tree(folder));
        Run.in(folder, "check", "hut.json");
        String index = Files.readString(folder.resolve("rainlap-out/hut-index.svg")), sheet = Files.readString(folder.resolve("rainlap-out/hut-b.svg"));
        assertTrue(index.contains(">hut-b.svg<") && index.contains(">1 / 3<"), "where the sheets of a wall are");
        assertTrue(sheet.contains(">3 / 3<"));
    }

    @Test void severalElevationsHaveAnIndexToo() {
        walls();
        assertEquals(ExitStatus.DONE, Run.in(folder, "check", "a.json", "b.json", "--sheet", "both.pdf").status());
        assertEquals(ExitStatus.DONE, Run.in(folder, "check", "a.json", "b.json").status());
        assertEquals(List.of("a.json", "b.json", "both.pdf", "hut.json", "rainlap-out/a.svg", "rainlap-out/b.svg", "rainlap-out/elevations-index.svg"), Run.tree(folder));
        assertEquals(ExitStatus.USAGE, Run.in(folder, "check", "a.json", "b.json", "--sheet", "both.svg").status(), "only a PDF holds several sheets");
    }

    @Test void problemsOfAllFilesAreToldAndNothingIsWritten() {
        walls();
        Run.file(folder, "b.json", Run.BAD);
        Run run = Run.in(folder, "check", "hut.json");
        assertEquals(ExitStatus.BAD_INPUT, run.status());
        assertTrue(run.err().contains("b.json:4:"), run.err());
        assertTrue(run.err().contains("2 problems in 1 of 3 files; nothing was checked or written"), run.err());
        assertEquals(List.of("a.json", "b.json", "hut.json"), Run.tree(folder));
    }

    @Test void noInputIsReplaced() {
        walls();
        Run run = Run.in(folder, "check", "hut.json", "--findings", "a.json");
        assertEquals(ExitStatus.USAGE, run.status());
        assertTrue(run.err().contains("would replace the input"), run.err());
    }

    @Test void aRuleThatBreaksDownIsTold() {
        walls();
        Run run = Run.in(folder, List.of(Rules.all().get(0), Run.CRASHING), "check", "hut.json", "--no-sheet");
        assertEquals(ExitStatus.INCOMPLETE, run.status());
        assertTrue(run.out().contains("FAILED: rule always-fails"), run.out());
    }
}
