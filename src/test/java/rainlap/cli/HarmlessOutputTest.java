package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rainlap.paper.Sheet;
import rainlap.paper.SheetSize;
import rainlap.rule.Rule;

/** No output replaces an input or a file of somebody else's, by whatever way it is named. */
class HarmlessOutputTest {
    private static final List<Rule> NONE = List.of();

    @TempDir
    Path folder;
    private String hut;

    @BeforeEach void writeHut() {
        hut = Run.file(folder, "hut.json", Run.SOUND);
    }

    private void refused(String why, String... args) {
        List<String> before = Run.tree(folder);
        Run run = Run.in(folder, NONE, args);
        assertEquals(ExitStatus.USAGE, run.status(), run.out() + run.err());
        assertTrue(run.err().contains(why), run.err());
        assertEquals("", run.out());
        assertEquals(before, Run.tree(folder));
        assertEquals(Run.SOUND, read(hut));
    }

    private static String read(String file) {
        try {
            return Files.readString(Path.of(file));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test void findingsOverTheInput() {
        refused("would replace the input", "check", hut, "--findings", hut);
        refused("would replace the input", "check", hut, "--findings", folder + "/./hut.json");
    }

    @Test void findingsOverAnotherInput() {
        String shed = Run.file(folder, "shed.json", Run.SOUND);
        refused("would replace the input", "check", hut, shed, "--findings", folder + "/{name}.json");
    }

    @Test void findingsOverTheInputThroughALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of(hut));
        refused("would replace the input", "check", hut, "--findings", link.toString());
        Path hard = Files.createLink(folder.resolve("hard.json"), Path.of(hut));
        refused("would replace the input", "check", hut, "--findings", hard.toString());
        Path way = Files.createSymbolicLink(folder.resolve("way"), folder);
        refused("would replace the input", "check", hut, "--findings", way.resolve("hut.json").toString());
        refused("would replace the input", "check", link.toString(), "--findings", hut);
    }

    @Test void aLinkToNothing() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), folder.resolve("nothing.json"));
        refused("link to a file that is not there", "check", hut, "--findings", link.toString());
    }

    /** What a shell makes of {@code --findings *.json}: the first elevation becomes the option's value. */
    @Test void findingsOverAnElevationThatIsNoInput() {
        String other = Run.file(folder, "other.json", Run.SOUND);
        refused("Rainlap did not write it", "check", hut, "--findings", other);
    }

    @Test void twoOutputsInOnePlace() {
        refused("two outputs", "check", hut, "--sheet", folder + "/a.svg", "--findings", folder + "/a.svg");
        String second = Run.file(folder, "sub/hut.json", Run.SOUND);
        refused("two outputs", "check", hut, second);
    }

    @Test void oneNameForSeveralFiles() {
        String shed = Run.file(folder, "shed.json", Run.SOUND);
        refused("names one file", "check", hut, shed, "--sheet", folder + "/a.svg");
        refused("names one file", "check", hut, shed, "--findings", folder + "/a.json");
    }

    @Test void aFolderThatIsNotThere() {
        refused("there is no folder", "check", hut, "--sheet", folder + "/nowhere/a.svg");
        refused("there is no folder", "check", hut, "--findings", folder + "/nowhere/a.json");
    }

    @Test void aSheetOfNoKindWeKnow() {
        refused("is none of them", "check", hut, "--sheet", folder + "/a.tiff");
        refused("is none of them", "check", hut, "--sheet", folder + "/a");
    }

    @Test void somethingThatIsNoOrdinaryFile() throws IOException {
        Files.createDirectory(folder.resolve("a.svg"));
        Run run = Run.in(folder, NONE, "check", hut, "--sheet", folder + "/a.svg");
        assertEquals(List.of("a.svg/hut.svg", "hut.json"), Run.tree(folder), run.err());
        Files.createDirectory(folder.resolve("rainlap-out"));
        Files.createDirectory(folder.resolve("rainlap-out/hut.svg"));
        refused("no ordinary file", "check", hut);
    }

    @Test void theDefaultFoldersNameTakenByAFile() {
        Run.file(folder, "rainlap-out", "mine");
        refused("there is no folder", "check", hut);
    }

    @Test void anOutputThroughALinkReachesTheFileBehindIt() throws IOException {
        Path real = folder.resolve("real.json");
        Files.createFile(real);
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);
        Run run = Run.in(folder, NONE, "check", hut, "--no-sheet", "--findings", link.toString());
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        assertTrue(Files.isSymbolicLink(link));
        assertTrue(Files.readString(real).startsWith("{\n  \"findings\""));
    }

    @Test void aNameThatTheMachineDoesNotKnow() {
        refused("no file name", "check", hut, "--sheet", folder + "/a\0b.svg");
    }

    @Test void aFolderThatMayNotBeWrittenTo() throws IOException {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        assumeTrue(locked.toFile().setWritable(false) && !Files.isWritable(locked), "this user may write anywhere");
        refused("may not be written to", "check", hut, "--findings", locked + "/a.json");
    }

    /** The second sheet of one drawing falls on the first of another: known only once both are drawn, and still nothing is written. */
    @Test void aFurtherSheetInAnothersPlace() {
        OutputFiles outputs = new OutputFiles(List.of(Path.of(hut)));
        Path first = folder.resolve("hut.svg"), second = folder.resolve("hut-2.svg");
        outputs.claim(first);
        outputs.claim(second);
        Sheet sheet = new Sheet(SheetSize.A4, "t", "en", List.of());
        Refusal e = assertThrows(Refusal.class, () -> {
            try (outputs) {
                new SheetFiles(outputs, 100).write(first, List.of(sheet, sheet));
            }
        });
        assertTrue(e.getMessage().contains("two outputs"), e.getMessage());
        assertEquals(List.of("hut.json"), Run.tree(folder));
    }

    @Test void whatFailsHalfWayLeavesNothing() {
        OutputFiles outputs = new OutputFiles(List.of());
        Path good = folder.resolve("good.json"), bad = folder.resolve("bad.json");
        outputs.claim(good);
        outputs.claim(bad);
        assertThrows(Refusal.class, () -> {
            try (outputs) {
                outputs.write(good, out -> out.write(1));
                outputs.write(bad, out -> {
                    throw new IOException("No space left on device");
                });
            }
        });
        assertEquals(List.of("hut.json"), Run.tree(folder));
    }

    @Test void fartherSheetsAreNumberedAndOldOnesPointedOut() throws IOException {
        Sheet sheet = new Sheet(SheetSize.A4, "t", "en", List.of());
        Path first = folder.resolve("a.svg");
        for (int sheets = 3; sheets >= 1; sheets -= 2) {
            try (OutputFiles outputs = new OutputFiles(List.of())) {
                outputs.claim(first);
                List<Path> places = new SheetFiles(outputs, 100).write(first, java.util.Collections.nCopies(sheets, sheet));
                outputs.moveAll();
                assertEquals(sheets == 1 ? List.of(folder.resolve("a-2.svg")) : List.of(), SheetFiles.leftOver(places));
            }
        }
        assertEquals(List.of("a-2.svg", "a-3.svg", "a.svg", "hut.json"), Run.tree(folder));
    }
}
