package rainlap.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import rainlap.paper.Sheet;
import rainlap.paper.SheetCheck;
import rainlap.paper.SvgWriter;

/** Writes the sample's sheets into a folder, to be looked at. */
final class DrawSample {
    private DrawSample() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        write(Sheets.of(SampleWall.result(), SampleWall.TITLE), folder, "sample");
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
