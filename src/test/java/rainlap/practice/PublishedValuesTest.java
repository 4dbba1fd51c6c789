package rainlap.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rainlap.source.Known;

/** Every shipped limit walks back to the figure it was taken from, and says no more than its document prints. */
class PublishedValuesTest {
    /** practice/limit, value, row of published-rows.txt or how it is known; written off by hand, complete. */
    private static final String SHIPPED = """
            common/course-lap 150 1.14
            common/end-lap 150 1.10,1.14,1.19
            common/tape-free-lap never common
            common/tape-cover 25 common
            common/lap-stagger 150 common
            common/end-lap-to-opening 150 common
            common/return-head 50 common
            common/return-jamb 50 common
            common/return-sill 50 common
            common/head-upstand 50 4.1,4.19
            common/flashing-past-opening 150 4.9,4.11,4.19
            common/flashing-fall 15 4.14
            common/end-dam 25 4.3
            common/flashing-lap 150 5.8
            common/flashing-lap-sealed 100 5.8
            common/sill-turn-up 25 common
            common/back-dam 8 4.21,3.12
            common/drip 5 4.5
            common/turn-down 10 4.4
            common/sill-fall 5 4.21,4.27
            common/sill-drip 6 4.27
            ca-obc/turn-down 10 4.4
            ca-obc/sill-fall 3.44 4.27
            ca-obc/sill-drip 6 4.27
            common/corner-wrap 300 2.5
            common/base-cover 25 1.25,1.26
            common/top-turn 25 common
            common/capping-cover 50 5.5
            common/capping-fall 5 5.5
            common/capping-lap 100 5.8
            au-abcb-2022/capping-cover 50 5.5
            au-abcb-2022/capping-fall 5 5.5
            au-abcb-2022/capping-lap 50 5.4
            common/ground-clearance 150 6.9
            common/sandy-clearance 150 6.9
            common/paved-clearance 150 6.9
            common/deck-clearance 35 6.12
            common/roof-clearance 50 6.13
            au-abcb-2022/sandy-clearance 100 6.9
            au-abcb-2022/paved-clearance 50 6.9
            nz-metal-cop/deck-clearance 35 6.12
            nz-metal-cop/roof-clearance 35 6.12
            ca-obc/roof-clearance 50 6.13
            common/cladding-below-frame 50 6.10
            common/eave-shelter 4 4.7,4.8
            common/driving-share 1 common
            common/cavity-depth 20 7.1
            common/cavity-open 0.8 7.11
            ca-obc/cavity-open 0.8 7.11
            common/cavity-outlet 1000 7.3
            common/batten-fall never 7.9
            common/batten-gap 50 7.2
            nz-metal-cop/head-upstand 50 4.19
            nz-metal-cop/back-dam 8 4.21
            nz-metal-cop/capping-cover 50 5.12
            nz-metal-cop/capping-fall 5 5.13
            nz-metal-cop/cladding-below-frame 50 6.10
            nz-metal-cop/cavity-depth 20 7.1
            nz-metal-cop/cavity-outlet 1000 7.3
            nz-metal-cop/clear-of-flashing 5 4.20
            nz-metal-cop/batten-fall 5 7.2
            nz-metal-cop/batten-gap 50 7.2
            uk-nhbc-2021/batten-fall never 7.9
            common/clear-of-flashing 5 4.20
            common/board-lap 30 6.1
            common/fibre-cement-lap 25 6.2
            common/hardboard-lap 20 6.2
            au-abcb-2022/fibre-cement-lap 25 6.2
            au-abcb-2022/hardboard-lap 20 6.2
            common/sheet-end-lap 150 6.8
            au-abcb-2022/board-lap 30 6.1
            nz-metal-cop/sheet-end-lap 150 6.8
            uk-nhbc-2021/cavity-depth 15 7.8
            ca-obc/cavity-depth 10 7.11
            au-abcb-2022/course-lap 150 1.14
            au-abcb-2022/end-lap 150 1.14
            au-abcb-2022/tape-free-lap 150 1.14
            au-abcb-2022/flashing-past-opening 110 4.9
            au-abcb-2022/flashing-lap-sealed 75 5.1
            au-abcb-2022/ground-clearance 150 6.9
            au-abcb-2022/cladding-below-frame 50 6.10
            au-abcb-2022/eave-shelter 3 4.8
            ca-obc/course-lap 100 1.7
            ca-obc/end-lap 100 1.7
            ca-obc/head-upstand 50 4.1
            ca-obc/flashing-fall 3.44 4.2
            ca-obc/end-dam 25 4.3
            ca-obc/drip 5 4.5
            ca-obc/eave-shelter 4 4.7
            ie-guide/course-lap 150 1.13
            ie-guide/end-lap 100 1.13
            jp-inspection/course-lap 90 1.22
            jp-inspection/end-lap 150 1.22
            jp-manual/course-lap 100 1.23
            jp-manual/end-lap 300 1.23
            jp-manual/corner-wrap 300 2.5
            nz-metal-cop/course-lap 75 1.18
            nz-metal-cop/end-lap 150 1.19
            nz-metal-cop/flashing-fall 15 4.14
            nz-metal-cop/flashing-lap 150 5.8
            nz-metal-cop/flashing-lap-sealed 100 5.8
            uk-nhbc-2021/course-lap 100 1.9
            uk-nhbc-2021/end-lap 150 1.10
            us-irc-2015/course-lap 51 1.1
            us-irc-2015/end-lap 152 1.2
            """;

    private static Stream<LimitValue> shipped() {
        return Practices.all().stream().flatMap(p -> p.ownValues().stream());
    }

    private static String name(LimitValue value) {
        return value.spokenBy() + "/" + value.limit().id();
    }

    private static List<PublishedRow> rows(LimitValue value) {
        String named = SHIPPED.lines().map(String::strip).filter(l -> l.startsWith(name(value) + " ")).findFirst().orElseThrow();
        return Arrays.stream(named.substring(named.lastIndexOf(' ') + 1).split(",")).flatMap(row -> {
            List<PublishedRow> found = PublishedRow.of(row);
            assertFalse(found.isEmpty(), () -> name(value) + " names row " + row + ", which is not in published-rows.txt");
            return found.stream();
        }).toList();
    }

    @Test
    void exactlyTheseValuesShip() {
        Map<String, String> actual = new TreeMap<>();
        shipped().forEach(v -> actual.put(name(v), v.number() + (v.source().known() == Known.COMMON_PRACTICE ? " common" : "")));
        Map<String, String> expected = new TreeMap<>();
        SHIPPED.lines().map(String::strip).map(line -> line.split(" "))
                .forEach(cells -> expected.put(cells[0], cells[1] + (cells[2].equals("common") ? " common" : "")));
        assertEquals(expected, actual);
    }

    @TestFactory
    Stream<DynamicTest> aPublishedValueIsTheFigureOfItsRow() {
        return shipped().filter(v -> v.source().known() == Known.PUBLISHED || v.source().known() == Known.PUBLISHED_SECONDARY)
                .map(v -> DynamicTest.dynamicTest(name(v), () -> assertTrue(
                        rows(v).stream().anyMatch(row -> saysTheSame(row, v)), () -> v + " is not what is printed: " + rows(v))));
    }

    private static boolean saysTheSame(PublishedRow row, LimitValue value) {
        String titled = (value.source().document() + " " + value.source().edition()).strip();
        return row.figure() == value.value()
                && row.unit().equals(value.isNever() ? "-" : value.limit().unit())
                && row.document().equals(titled)
                && value.source().clause().contains(row.clause())
                && row.known().equals(value.source().known().text());
    }

    @TestFactory
    Stream<DynamicTest> aDerivedLengthOfCommonIsAFigureOfOneOfItsRows() {
        return shipped().filter(v -> v.source().known() == Known.DERIVED && v.limit().isLength())
                .map(v -> DynamicTest.dynamicTest(name(v), () -> {
                    assertEquals(Practices.COMMON, v.spokenBy());
                    assertTrue(rows(v).stream().anyMatch(row -> row.figure() == v.value()), () -> v + " is in none of " + rows(v));
                }));
    }

    @Test
    void nothingFromMemoryIsALimit() {
        assertTrue(shipped().noneMatch(v -> v.source().known() == Known.FROM_MEMORY));
    }

    @Test
    void inchesArePrintedInWholeMillimetres() {
        for (String row : List.of("1.1", "1.2")) {
            double inches = figure(row, "in");
            assertEquals(figure(row, "mm"), Math.round(inches * 25.4), "row " + row);
        }
    }

    @Test
    void theCanadianEaveFactorIsTheInverseOfTheQuarterPrinted() {
        LimitValue factor = Practices.find("ca-obc").orElseThrow().get(Limit.EAVE_SHELTER);
        assertEquals(1 / figure("4.7", "share"), factor.value());
        assertTrue(factor.isMetBy(4.0), "flashing is needed only above a quarter");
        assertFalse(factor.isMetBy(3.99));
    }

    @Test
    void theCanadianFallIsThePrintedSlopeInDegrees() {
        Map.of("4.2", Limit.FLASHING_FALL, "4.27", Limit.SILL_FALL).forEach((row, limit) -> assertEquals(
                Math.ceil(Math.toDegrees(Math.atan(figure(row, "share"))) * 100) / 100, Practices.find("ca-obc").orElseThrow().get(limit).value()));
    }

    @Test
    void theAustralianEaveMustBeWiderThanThreeTimes() {
        LimitValue factor = Practices.find("au-abcb-2022").orElseThrow().get(Limit.EAVE_SHELTER);
        assertFalse(factor.isMetBy(3.0));
        assertTrue(factor.isMetBy(3.01));
        assertEquals("over 3 x", factor.text());
    }

    @Test
    void onlyTheAustralianLapsAndANewZealandUpstandMayBeTapedInstead() {
        List<String> orTaped = shipped().filter(LimitValue::orTaped).map(PublishedValuesTest::name).toList();
        assertEquals(List.of("au-abcb-2022/course-lap", "au-abcb-2022/end-lap", "nz-metal-cop/head-upstand"), orTaped);
    }

    @Test
    void commonIsNowhereLaxerButForTwoEndLaps() {
        for (Practice practice : Practices.all()) {
            for (LimitValue value : practice.ownValues()) {
                boolean knownExcess = List.of("us-irc-2015/end-lap", "jp-manual/end-lap").contains(name(value));
                assertEquals(knownExcess, Practices.common().get(value.limit()).value() < value.value(), name(value));
            }
        }
    }

    private static double figure(String row, String unit) {
        return PublishedRow.of(row).stream().filter(r -> r.unit().equals(unit)).findFirst().orElseThrow().figure();
    }
}
