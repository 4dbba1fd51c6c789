package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rainlap.rule.Rule;

/** Where lists are written, and what they replace. */
class ListCommandTest {
    private static final List<Rule> FINDING = List.of(Run.FINDING);

    @TempDir
    private Path folder;

    @BeforeEach void writeHut() {
        Run.file(folder, "hut.json", Run.SOUND);
    }

    private Run check(String... args) {
        String[] all = new String[args.length + 2];
        all[0] = "check";
        all[1] = "--no-sheet";
        System.arraycopy(args, 0, all, 2, args.length);
        return Run.in(folder, FINDING, all);
    }

    @Test void oneWorkbookOrTwoFilesOfText() {
        Run xlsx = check("hut.json", "--list", "out.xlsx"), csv = check("hut.json", "--list", "out.CSV");
        assertEquals(ExitStatus.DONE, xlsx.status(), xlsx.err());
        assertTrue(xlsx.out().endsWith("lists: " + folder.resolve("out.xlsx") + "\n"), xlsx.out());
        assertTrue(csv.out().endsWith("list of weak points: " + folder.resolve("out.CSV") + "\nlist of joints: " + folder.resolve("out-joints.CSV") + "\n"), csv.out());
        assertEquals(List.of("hut.json", "out-joints.CSV", "out.CSV", "out.xlsx"), Run.tree(folder));
    }

    @Test void severalElevationsHaveListsOfTheirOwn() throws IOException {
        Run.file(folder, "shed.json", Run.SOUND);
        Run one = check("hut.json", "shed.json", "--list", "out.xlsx");
        assertEquals(ExitStatus.USAGE, one.status());
        assertTrue(one.err().contains("{name}"), one.err());
        check("hut.json", "shed.json", "--list", "{name}-list.csv");
        Files.createDirectory(folder.resolve("lists"));
        check("hut.json", "shed.json", "--list", "lists");
        assertEquals(List.of("hut-list-joints.csv", "hut-list.csv", "hut.json", "lists/hut.xlsx", "lists/shed.xlsx", "shed-list-joints.csv", "shed-list.csv",
                "shed.json"), Run.tree(folder));
    }

    @Test void aBuildingHasOneList() throws IOException {
        Run run = Run.in(Path.of(""), "check", "elevations/buildings/bakery-trailer.json", "--no-sheet", "--list", folder + "/b.csv");
        assertEquals(ExitStatus.DONE, run.status(), run.err());
        List<String> walls = Files.readAllLines(folder.resolve("b-joints.csv")).stream().skip(1).map(l -> l.substring(0, l.indexOf(','))).distinct().toList();
        assertEquals(List.of("left", "rear", "right"), walls);
    }

    @Test void itsOwnFilesAreReplacedByTheSameBytes() throws IOException {
        for (String place : List.of("a.xlsx", "a.csv")) {
            check("hut.json", "--list", place);
            byte[] first = Files.readAllBytes(folder.resolve(place));
            assertEquals(ExitStatus.DONE, check("hut.json", "--list", place).status());
            assertArrayEquals(first, Files.readAllBytes(folder.resolve(place)));
        }
    }

    @Test void whatSomebodyWorkedOnIsLeftAlone() throws IOException {
        check("hut.json", "--list", "a.xlsx");
        check("hut.json", "--list", "a.csv");
        Path book = folder.resolve("a.xlsx"), joints = folder.resolve("a-joints.csv");
        try (XSSFWorkbook opened = new XSSFWorkbook(new FileInputStream(book.toFile())); FileOutputStream out = new FileOutputStream(book.toFile())) {
            opened.getSheetAt(0).getRow(0).createCell(40).setCellValue("done by");
            opened.write(out);
        }
        Files.writeString(joints, Files.readString(joints).replaceFirst("\r\n", ",done by\r\n"));
        Run.file(folder, "mine.csv", "a,b\r\n1,2\r\n");
        for (String place : List.of("a.xlsx", "a.csv", "mine.csv")) {
            Run run = check("hut.json", "--list", place);
            assertEquals(ExitStatus.USAGE, run.status());
            assertTrue(run.err().contains("Rainlap did not write it"), run.err());
        }
    }

    @Test void noOtherFormIsGuessed() {
        Run run = check("hut.json", "--list", "a.ods");
        assertEquals(ExitStatus.USAGE, run.status());
        assertTrue(run.err().contains("a list is an XLSX or a CSV"), run.err());
        assertEquals(List.of("hut.json"), Run.tree(folder));
    }

    @Test void listsAndFindingsInOnePlaceAreRefused() {
        Run run = check("hut.json", "--list", "a-joints.csv", "--findings", "a-joints.csv");
        assertEquals(ExitStatus.USAGE, run.status());
        assertTrue(run.err().contains("two outputs"), run.err());
    }
}
