package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

class MaterialKindTest {
    private static List<String> words(Predicate<MaterialKind> those) {
        return Arrays.stream(MaterialKind.values()).filter(those).map(MaterialKind::word).toList();
    }

    @Test
    void kindsHaveTheWordsOfTheFile() {
        assertEquals(
                List.of("membrane", "tape", "flashing", "batten", "cladding", "trim", "sealant", "collar", "corner-piece", "frame"),
                words(k -> true));
        for (MaterialKind kind : MaterialKind.values()) {
            assertEquals(Optional.of(kind), MaterialKind.find(kind.word()));
        }
        assertEquals(Optional.empty(), MaterialKind.find("corner_piece"));
    }

    @Test
    void sheetsFormJointsAndTapesDoNot() {
        assertEquals(
                List.of("membrane", "flashing", "cladding", "collar", "corner-piece"), words(MaterialKind::isSheetLike));
    }

    @Test
    void softKindsFold() {
        assertEquals(List.of("membrane", "tape", "collar", "corner-piece"), words(MaterialKind::folds));
    }

    @Test
    void everyKindBelongsToABarrier() {
        assertEquals(List.of("batten"), words(k -> k.layer() == Layer.CAVITY));
        assertEquals(List.of("cladding", "trim"), words(k -> k.layer() == Layer.FACE));
        assertEquals(
                List.of("membrane", "tape", "flashing", "sealant", "collar", "corner-piece", "frame"),
                words(k -> k.layer() == Layer.WRAP));
    }

    @Test
    void tapesAndCornerPiecesStickByDefault() {
        assertEquals(List.of("tape", "corner-piece"), words(k -> k.defaultBond().equals(Bond.FULL)));
        assertEquals(8, words(k -> k.defaultBond().isLoose()).size());
    }
}
