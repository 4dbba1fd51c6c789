package rainlap;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rainlap.check.Rules;

class RulePicturesTest {
    /** A picture is part of no sheet: it is as high as what is drawn on it. */
    @Test void noPictureHasTooLittleRoomForTheMendedCut() {
        List<String> wrong = Rules.all().stream().flatMap(r -> RulePictures.of(r.info().id()).stream())
                .filter(p -> words(p.drawing().svg()).contains("there is no room")).map(RulePictures.Picture::file).toList();
        assertEquals(List.of(), wrong);
    }

    private static String words(String svg) {
        return Pattern.compile("<text[^>]*>([^<]*)</text>").matcher(svg).results().map((MatchResult m) -> m.group(1)).collect(Collectors.joining(" "));
    }
}
