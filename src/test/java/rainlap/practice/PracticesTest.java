package rainlap.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.source.Known;
import rainlap.source.Source;

class PracticesTest {
    private static Practice practice(String id) {
        return Practices.find(id).orElseThrow();
    }

    @Test
    void commonComesFirstAndTheOthersAreSorted() {
        List<String> ids = new ArrayList<>(Practices.ids());
        assertEquals("common", ids.remove(0));
        assertEquals(ids.stream().sorted().distinct().toList(), ids);
        assertEquals(List.of("au-abcb-2022", "ca-obc", "ie-guide", "jp-inspection", "jp-manual", "nz-metal-cop", "uk-nhbc-2021", "us-irc-2015"), ids);
    }

    @Test
    void aPracticeIsFoundByItsExactIdOnly() {
        Practices.all().forEach(p -> assertEquals(Optional.of(p), Practices.find(p.id())));
        assertEquals(Optional.empty(), Practices.find("AU-ABCB-2022"));
        assertEquals(Optional.empty(), Practices.find("au-abcb"));
    }

    @Test
    void commonHasAValueForEveryLimitAndSpeaksForItself() {
        for (Limit limit : Limit.values()) {
            assertFalse(Practices.common().isSilentOn(limit), limit.id());
            assertEquals("common", Practices.common().get(limit).spokenBy(), limit.id());
            assertEquals(limit, Practices.common().get(limit).limit());
        }
    }

    @Test
    void whereAPracticeIsSilentCommonSpeaks() {
        for (Practice practice : Practices.all()) {
            for (Limit limit : Limit.values()) {
                LimitValue value = practice.get(limit);
                if (practice.isSilentOn(limit)) {
                    assertEquals(Practices.common().get(limit), value, practice + " on " + limit.id());
                    assertEquals("common", value.spokenBy());
                } else {
                    assertEquals(practice.id(), value.spokenBy());
                }
            }
        }
        assertTrue(practice("us-irc-2015").isSilentOn(Limit.TAPE_COVER));
        assertFalse(practice("us-irc-2015").isSilentOn(Limit.COURSE_LAP));
    }

    @Test
    void everyValueOfCommonOutsideThePublishedSaysWhy() {
        for (LimitValue value : Practices.common().ownValues()) {
            assertTrue(
                    value.source().known() == Known.COMMON_PRACTICE || value.source().known() == Known.DERIVED,
                    value.limit().id() + ": common is no document, so it cannot be published");
            assertFalse(value.note().isBlank(), value.limit().id());
        }
    }

    @Test
    void theFactsOfTheTradeStandInCommonAlone() {
        List<String> facts = Practices.common().facts();
        for (String said : List.of("overlapped and every joint is taped", "each joint and each corner, with the finishing bead on top",
                "secondary barrier, the cladding the primary", "foil faced", "into battens and battens into the frame, with fixings matched to the sheet",
                "neither corrode nor decay", "by road is at most 4 m high")) {
            assertEquals(1, facts.stream().filter(f -> f.contains(said)).count(), said);
        }
        assertEquals(8, facts.size(), "each fact is looked for above, but for the diagonal cut");
        assertTrue(facts.get(1).contains("cut on the diagonal"));
        Practices.all().stream().skip(1).forEach(p -> assertEquals(List.of(), p.facts(), p.id()));
    }

    @Test
    void limitIdsAreUniqueAndPlain() {
        HashSet<String> ids = new HashSet<>();
        for (Limit limit : Limit.values()) {
            assertTrue(ids.add(limit.id()), limit.id());
            assertTrue(limit.id().matches("[a-z]+(-[a-z]+)*"), limit.id());
            assertEquals(limit.name().toLowerCase(Locale.ROOT).replace('_', '-'), limit.id());
            assertTrue(limit.meaning().endsWith("."), limit.id());
            assertFalse(limit.plainName().isBlank());
            assertEquals(Optional.of(limit), Limit.find(limit.id()));
        }
        assertEquals(List.of("flashing-fall", "sill-fall", "capping-fall", "eave-shelter", "cavity-open", "cavity-outlet", "batten-fall", "driving-share"),
                Arrays.stream(Limit.values()).filter(l -> !l.isLength()).map(Limit::id).toList());
        assertEquals(Optional.empty(), Limit.find("course lap"));
    }

    @Test
    void neverIsLongerThanAnyLap() {
        LimitValue never = Practices.common().get(Limit.TAPE_FREE_LAP);
        assertTrue(never.isNever());
        assertEquals(Long.MAX_VALUE, never.hundredths());
        assertFalse(never.isMetBy(1e9));
        assertEquals("never", never.text());
        assertFalse(practice("au-abcb-2022").get(Limit.TAPE_FREE_LAP).isNever());
    }

    @Test
    void lengthsGoToTheGridAndFactorsDoNot() {
        assertEquals(5100, practice("us-irc-2015").get(Limit.COURSE_LAP).hundredths());
        assertEquals("51 mm", practice("us-irc-2015").get(Limit.COURSE_LAP).text());
        assertEquals("150 mm or taped", practice("au-abcb-2022").get(Limit.END_LAP).text());
        assertThrows(IllegalStateException.class, () -> Practices.common().get(Limit.EAVE_SHELTER).hundredths());
    }

    @Test
    void aLimitIsMetByExactlyItself() {
        LimitValue lap = Practices.common().get(Limit.COURSE_LAP);
        assertTrue(lap.isMetBy(150));
        assertFalse(lap.isMetBy(149.99));
    }

    @Test
    void aLimitIsAboveZeroAndSaidBySomebody() {
        for (double wrong : new double[] {0, -1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class,
                    () -> new LimitValue(Limit.END_LAP, wrong, false, Source.commonPractice(), "common", ""));
        }
        assertThrows(IllegalArgumentException.class,
                () -> new LimitValue(Limit.END_LAP, 1, false, Source.commonPractice(), "", ""));
    }
}
