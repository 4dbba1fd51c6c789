package rainlap.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SvgWriter;
import rainlap.practice.Practice;
import rainlap.practice.Practices;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

/** Writes the sample's sheets into a folder, to be looked at. */
final class DrawSample {
    private DrawSample() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        write(Sheets.of(SampleWall.result(), SampleWall.TITLE), folder, "sample");
        write(Sheets.of(Checker.check(SampleWall.elevation(), Stage.FINISHED, Practices.common()), TitleBlock.BLANK), folder, "finished");
        try (Stream<Path> files = Files.list(Path.of("elevations"))) {
            for (Path file : files.sorted().toList()) {
                Elevation e = ElevationFile.read(file).elevation().orElseThrow();
                Practice practice = e.practice().flatMap(Practices::find).orElse(Practices.common());
                write(Sheets.of(Checker.check(e, Stage.WRAP, practice), SampleWall.TITLE), folder, file.getFileName().toString());
            }
        }
    }

    static void write(List<Sheet> sheets, Path folder, String name) throws IOException {
        for (int i = 0; i < sheets.size(); i++) {
            try (OutputStream out = Files.newOutputStream(folder.resolve(name + "-" + (i + 1) + ".svg"))) {
                SvgWriter.write(sheets.get(i), out);
            }
            SheetCheck.of(sheets.get(i)).forEach(System.out::println);
        }
    }
}
