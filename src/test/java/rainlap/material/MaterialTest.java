package rainlap.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rainlap.source.Source;

class MaterialTest {
    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static final OptionalDouble NO = OptionalDouble.empty();

    @Test
    void aMaterialOfWhichOnlyTheKindIsKnownHoldsAsItsKindDoes() {
        Material tape = Material.of("t", MaterialKind.TAPE);
        assertEquals(Bond.FULL, tape.bond());
        assertEquals("t", tape.name());
        assertEquals(NO, tape.widthMm());
        assertEquals(Layer.WRAP, tape.layer());
        assertEquals(Optional.empty(), tape.originOf("width"));
    }

    @Test
    void copiesChangeOneThing() {
        Material tape = Material.of("t", MaterialKind.TAPE).withSizes(Sizes.ofWidth(60)).withName("Tape")
                .withBond(Bond.LOOSE).withOrigins(Map.of("width", Source.commonPractice()));
        assertEquals(of(60), tape.widthMm());
        assertEquals("Tape", tape.name());
        assertEquals(Bond.LOOSE, tape.bond());
        assertEquals(Optional.of(Source.commonPractice()), tape.originOf("width"));
        assertEquals("t", tape.id());
    }

    @Test
    void aPieceOverridesItsMaterialsProfile() {
        Profile material = new Profile(of(50), of(15), of(75), Optional.of(EndDams.BOTH), of(25), NO, NO, of(20));
        Profile piece = new Profile(NO, of(0), NO, Optional.of(EndDams.NONE), NO, of(5), NO, NO);
        assertEquals(
                new Profile(of(50), of(0), of(75), Optional.of(EndDams.NONE), of(25), of(5), NO, of(20)), piece.or(material));
        assertEquals(material, Profile.NONE.or(material));
    }

    @Test
    void absurdNumbersAreRefusedByTheirKeys() {
        refused("width", () -> Sizes.ofWidth(0));
        refused("roll_width", () -> Sizes.ofRoll(Double.POSITIVE_INFINITY, 30));
        refused("fall_deg", () -> new Profile(NO, of(90), NO, Optional.empty(), NO, NO, NO, NO));
        refused("upstand", () -> new Profile(NO, NO, of(-1), Optional.empty(), NO, NO, NO, NO));
        refused("service_c", () -> new TemperatureRange(20, 20));
        refused("service_c", () -> new TemperatureRange(Double.NaN, 20));
        refused("uv_days", () -> new Durability(Optional.empty(), Optional.empty(), of(0), Optional.empty(), Optional.empty(), Optional.empty()));
        refused("metal", () -> new Durability(Optional.of(" "), Optional.empty(), NO, Optional.empty(), Optional.empty(), Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> Material.of("", MaterialKind.TAPE));
    }

    private static void refused(String key, Runnable making) {
        String message = assertThrows(IllegalArgumentException.class, making::run).getMessage();
        assertTrue(message.startsWith(key + " "), message);
    }
}
