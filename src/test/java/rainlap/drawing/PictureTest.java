package rainlap.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rainlap.check.CheckResult;
import rainlap.check.Checker;
import rainlap.file.ElevationFile;
import rainlap.paper.Group;
import rainlap.paper.PaperBox;
import rainlap.practice.Practices;
import rainlap.report.RuleExamples;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

class PictureTest {
    /** What draws nothing, such as the rain on a dry wall, does not stretch the picture to the corner of the sheet. */
    @Test void isCutToWhatIsDrawn() {
        String svg = Picture.of(checked("good-1-lapped.json")).svg();
        Matcher box = Pattern.compile("viewBox=\"([0-9.]+) ([0-9.]+) ([0-9.]+) ([0-9.]+)\"").matcher(svg);
        assertTrue(box.find());
        assertTrue(Double.parseDouble(box.group(1)) > 60, box.group());
        assertTrue(Double.parseDouble(box.group(3)) < 150, box.group());
    }

    @Test void showsTheSectionCloseBesideTheElevation() {
        Picture picture = Picture.of(checked("bad-1-edge-to-edge.json"));
        Group elevation = (Group) picture.sheet().marks().get(0), sections = (Group) picture.sheet().marks().get(1);
        PaperBox left = elevation.box(), right = sections.box();
        assertTrue(right.left() > left.right() && right.left() - left.right() < 10, left + " " + right);
    }

    @Test void sameWallSameBytes() {
        assertEquals(Picture.of(checked("bad-1-edge-to-edge.json")).svg(), Picture.of(checked("bad-1-edge-to-edge.json")).svg());
    }

    private static CheckResult checked(String example) {
        Elevation e = ElevationFile.read(example, RuleExamples.bytes("butt-joint", example)).elevation().orElseThrow();
        return Checker.check(e, Stage.drawn(e), Practices.common());
    }
}
