package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rainlap.rule.Rule;

class CheckCommandTest {
    private static final List<Rule> NONE = List.of();

    @TempDir
    Path folder;
    private String hut;

    @BeforeEach void writeHut() {
        hut = Run.file(folder, "hut.json", Run.SOUND);
    }

    @Test void withoutOptionsItPrintsAndDrawsWhereNothingIsHarmed() {
        Run run = Run.in(folder, NONE, "check", "hut.json");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertEquals("", run.err());
        assertTrue(run.out().contains("Sound wall (hut.json)"), run.out());
        assertTrue(run.out().contains("Joints, 1: 1 course lap"), run.out());
        assertTrue(run.out().endsWith("sheet: " + folder.resolve("rainlap-out/hut.svg") + "\n"), run.out());
        assertEquals(List.of("hut.json", "rainlap-out/hut.svg"), Run.tree(folder));
    }

    @Test void aSecondRunReplacesItsOwnSheetByTheSameBytes() throws IOException {
        Run.in(folder, NONE, "check", "hut.json");
        Path sheet = folder.resolve("rainlap-out/hut.svg");
        byte[] first = Files.readAllBytes(sheet);
        assertEquals(ExitStatus.DONE, Run.in(folder, NONE, "check", "hut.json").status());
        assertArrayEquals(first, Files.readAllBytes(sheet));
    }

    @Test void aWallThatNoSheetHoldsIsRefusedBeforeItIsChecked() {
        String tower = Run.file(folder, "tower.json", Run.SOUND.replace("2400]", "60000]"));
        Run run = Run.in(folder, NONE, "check", tower, "--sheet", "tower.pdf");
        assertEquals(ExitStatus.USAGE, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("a wall of 3000 x 60000 mm is too high for A3 at 1:100\n  give it as several elevations"), run.err());
        assertEquals(ExitStatus.DONE, Run.in(folder, NONE, "check", tower, "--no-sheet").status());
    }

    @Test void aForeignFileInTheDefaultPlaceIsLeftAlone() throws IOException {
        String mine = Run.file(folder, "rainlap-out/hut.svg", "<svg>my own</svg>");
        Run run = Run.in(folder, NONE, "check", "hut.json");
        assertEquals(ExitStatus.USAGE, run.status());
        assertTrue(run.err().contains("Rainlap did not write it"), run.err());
        assertEquals("<svg>my own</svg>", Files.readString(Path.of(mine)));
    }

    @Test void holesArePrintedAndWrittenOnlyWhenAskedForAndChangeNoStatus() throws IOException {
        Run plain = Run.in(folder, NONE, "check", hut, "--no-sheet", "--findings", "plain.json", "--strict");
        Run holes = Run.in(folder, NONE, "check", hut, "--no-sheet", "--findings", "holes.json", "--strict", "--simulate-defects");
        assertEquals(ExitStatus.DONE, plain.status(), plain.err());
        assertEquals(ExitStatus.DONE, holes.status(), holes.err());
        assertFalse(plain.out().contains("Simulated defects"));
        assertTrue(holes.out().contains("Simulated defects: 6 mm holes after NCC Volume Two 2022, H2V1(5)(d), (6), published"), holes.out());
        assertTrue(holes.out().contains("A desk study on the drawing, not that test"), holes.out());
        assertTrue(holes.out().contains("penetration: no penetration is drawn"), holes.out());
        assertTrue(Files.readString(folder.resolve("plain.json")).contains("\"simulated_defects\": null"));
        assertTrue(Files.readString(folder.resolve("holes.json")).contains("\"simulated_defects\": {"));
    }

    @Test void weakPointsAreStatus4OnlyWhenStrict() {
        Run plain = Run.in(folder, List.of(Run.FINDING), "check", hut, "--no-sheet");
        Run strict = Run.in(folder, List.of(Run.FINDING), "check", hut, "--no-sheet", "--strict");
        assertEquals(ExitStatus.DONE, plain.status());
        assertEquals(ExitStatus.WEAK_POINTS, strict.status());
        assertTrue(strict.out().contains("1 weak point: 1 with no defence"), strict.out());
        assertTrue(strict.out().contains("remedy    Make it otherwise."), strict.out());
        assertEquals(ExitStatus.DONE, Run.in(folder, NONE, "check", hut, "--no-sheet", "--strict").status());
    }

    @Test void aRuleThatBreaksDownIsStatus5AndTheOthersGoOn() {
        Run run = Run.in(folder, List.of(Run.CRASHING, Run.FINDING), "check", hut, "--no-sheet");
        assertEquals(ExitStatus.INCOMPLETE, run.status());
        assertTrue(run.out().contains("FAILED: rule always-fails"), run.out());
        assertTrue(run.out().contains("1 weak point"), run.out());
    }

    @Test void strictSays4AndTheReportSaysBoth() {
        Run run = Run.in(folder, List.of(Run.CRASHING, Run.FINDING), "check", hut, "--no-sheet", "--strict");
        assertEquals(ExitStatus.WEAK_POINTS, run.status());
        assertTrue(run.out().contains("FAILED: rule always-fails"), run.out());
    }

    @Test void badInputPrintsEveryProblemOfEveryFileAndWritesNothing() {
        String bad = Run.file(folder, "bad.json", Run.BAD);
        Run run = Run.in(folder, NONE, "check", hut, bad, "--sheet", folder + "/{name}.svg", "--findings", folder + "/{name}-f.json");
        assertEquals(ExitStatus.BAD_INPUT, run.status());
        assertEquals("", run.out());
        assertTrue(run.err().contains("bad.json:4:"), run.err());
        assertTrue(run.err().contains("foil-membrane"), run.err());
        assertTrue(run.err().contains("bad.json:5:"), run.err());
        assertTrue(run.err().contains("problems in 1 of 2 files; nothing was checked or written"), run.err());
        assertFalse(run.err().contains("\tat "), run.err());
        assertEquals(List.of("bad.json", "hut.json"), Run.tree(folder));
    }

    @Test void aMissingFileIsBadInputAndTheNearestIsNamed() {
        Run run = Run.in(folder, NONE, "check", "hat.json");
        assertEquals(ExitStatus.BAD_INPUT, run.status());
        assertTrue(run.err().startsWith("hat.json: there is no such file\n"), run.err());
        assertTrue(run.err().contains("hut.json\"?"), run.err());
    }

    @Test void aFolderInPlaceOfAFileIsBadInput() {
        assertEquals(ExitStatus.BAD_INPUT, Run.in(folder, NONE, "check", folder.toString()).status());
    }

    @Test void standardInputIsReadForAHyphen() {
        Run run = Run.in(folder, NONE, Run.SOUND, Map.of(), "check", "-");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertEquals(List.of("hut.json", "rainlap-out/standard-input.svg"), Run.tree(folder));
    }

    @Test void findingsAreWrittenBesideTheTable() throws IOException {
        Run run = Run.in(folder, NONE, "check", hut, "--no-sheet", "--findings", folder.resolve("f.json").toString());
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertTrue(Files.readString(folder.resolve("f.json")).startsWith("{\n  \"findings\": 1,\n  \"elevation\": \"Sound wall\""));
    }

    @Test void severalFilesGoIntoAFolderWithATotal() throws IOException {
        String shed = Run.file(folder, "shed.json", Run.SOUND);
        Files.createDirectory(folder.resolve("out"));
        Run run = Run.in(folder, List.of(Run.FINDING), "check", hut, shed, "--sheet", folder + "/out", "--findings", folder + "/out/");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertTrue(run.out().contains("Together, 2 elevations: 2 weak points"), run.out());
        assertEquals(List.of("hut.json", "out/elevations-index.svg", "out/hut.findings.json", "out/hut.svg", "out/shed.findings.json", "out/shed.svg", "shed.json"),
                Run.tree(folder));
    }

    @Test void aPngHasTheResolutionAskedFor() throws IOException {
        Path png = folder.resolve("hut.png");
        Run run = Run.in(folder, NONE, "check", hut, "--sheet", png.toString(), "--dpi", "30");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        byte[] bytes = Files.readAllBytes(png);
        assertArrayEquals(new byte[] {(byte) 0x89, 'P', 'N', 'G'}, Arrays.copyOf(bytes, 4));
        var image = javax.imageio.ImageIO.read(png.toFile());
        assertEquals(Math.round(420 / 25.4 * 30), image.getWidth());
        assertTrue(Signature.isOn(png));
        assertEquals(ExitStatus.DONE, Run.in(folder, NONE, "check", hut, "--sheet", png.toString(), "--dpi", "30").status());
    }

    @Test void aPdfHoldsAllSheetsAndIsKnownAgain() throws IOException {
        Path pdf = folder.resolve("hut.pdf");
        Run run = Run.in(folder, NONE, "check", hut, "--sheet", pdf.toString());
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertEquals("", run.err());
        byte[] first = Files.readAllBytes(pdf);
        assertArrayEquals(new byte[] {'%', 'P', 'D', 'F', '-'}, Arrays.copyOf(first, 5));
        assertTrue(Signature.isOn(pdf));
        assertEquals(ExitStatus.DONE, Run.in(folder, NONE, "check", hut, "--sheet", pdf.toString()).status());
        assertArrayEquals(first, Files.readAllBytes(pdf));
        try (PDDocument other = new PDDocument()) {
            other.addPage(new PDPage());
            other.save(pdf.toFile());
        }
        byte[] foreign = Files.readAllBytes(pdf);
        assertEquals(ExitStatus.USAGE, Run.in(folder, NONE, "check", hut, "--sheet", pdf.toString()).status());
        assertArrayEquals(foreign, Files.readAllBytes(pdf));
    }

    @Test void theTitleBlockCarriesWhatIsGivenAndNoDateByItself() throws IOException {
        Run.in(folder, NONE, "check", hut, "--owner", "A & <B>", "--date", "2026-03-31", "--sheet", folder + "/a.svg");
        String svg = Files.readString(folder.resolve("a.svg"));
        assertTrue(svg.contains("A &amp; &lt;B"), "escaped owner");
        assertTrue(svg.contains("2026-03-31"));
        Run.in(folder, NONE, "check", hut, "--sheet", folder + "/b.svg");
        assertFalse(Files.readString(folder.resolve("b.svg")).contains("2026"));
    }

    /** U+F8FE is for private use: no font has it. */
    @Test void whatTheSheetCannotShowIsNamed() throws IOException {
        Run.file(folder, "hut.json", Run.SOUND.replace("Sound wall", "Sound \uF8FE wall"));
        for (String form : List.of("pdf", "png")) {
            Run run = Run.in(folder, NONE, "check", hut, "--sheet", folder + "/a." + form);
            assertTrue(run.out().contains("\"?\" stands on the sheet for \uF8FE: neither its typeface nor a font of this machine has it."), run.out());
        }
        for (String form : List.of("svg", "html")) {
            assertFalse(Run.in(folder, NONE, "check", hut, "--sheet", folder + "/a." + form).out().contains("stands on the sheet"));
            assertTrue(Files.readString(folder.resolve("a." + form)).contains("\uF8FE"));
        }
        assertFalse(Run.in(folder, NONE, "check", Run.file(folder, "plain.json", Run.SOUND), "--sheet", folder + "/b.pdf").out().contains("stands on the sheet"));
    }
}
