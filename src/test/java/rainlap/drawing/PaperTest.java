package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SheetSize;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** Sheets on A4, and sheets that stand: nothing overlaps, nothing is lost, the wall decides how the paper lies. */
class PaperTest {
    @Test void everyShippedWallIsLegibleOnA4() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                CheckResult result = result(file, Stage.WRAP);
                List<Sheet> sheets = Sheets.of(result, SampleWall.TITLE, Sheets.Paper.A4);
                for (int i = 0; i < sheets.size(); i++) {
                    assertEquals(List.of(), SheetCheck.of(sheets.get(i)), file + ", sheet " + (i + 1));
                    assertEquals("A4", sheets.get(i).size().word());
                }
            }
        }
    }

    @Test void theWallDecidesHowThePaperLies() {
        assertEquals(SheetSize.A4_LYING, size(9000, 2000, Sheets.Paper.A4));
        assertEquals(SheetSize.A4, size(3000, 2400, Sheets.Paper.A4));
        assertEquals(SheetSize.A3, size(7000, 2400, Sheets.Paper.A3));
        assertEquals(SheetSize.A3_UPRIGHT, size(3000, 5500, Sheets.Paper.A3));
    }

    private static SheetSize size(double width, double height, Sheets.Paper paper) {
        return Sheets.of(PlacingTest.bareWall(width, height), TitleBlock.BLANK, paper).get(0).size();
    }

    private static CheckResult result(Path file, Stage stage) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        return Checker.check(e, stage, Practices.find(e.practice().orElse(Practices.COMMON)).orElseThrow());
    }
}
