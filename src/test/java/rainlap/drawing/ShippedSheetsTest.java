package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** The sheets of the walls that ship, at both stages. */
class ShippedSheetsTest {

    static Stream<Path> elevations() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            return files.filter(f -> f.toString().endsWith(".json")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("elevations")
    void areSoundOnPaper(Path file) {
        Elevation e = ElevationFile.read(file).elevation().orElseThrow();
        Practice practice = e.practice().flatMap(Practices::find).orElse(Practices.common());
        for (Stage stage : Stage.values()) {
            CheckResult result = Checker.check(e, stage, practice);
            for (Sheet s : Sheets.of(result, TitleBlock.BLANK)) {
                assertEquals(List.of(), SheetCheck.of(s), file + " " + stage);
                assertEquals(List.of(), WrittenOver.by(s.marks()), file + " " + stage + ": words under the water's way");
                assertEquals(List.of(), OutOfSection.of(s.marks()), file + " " + stage + ": the water's way leaves the section");
            }
        }
    }
}
