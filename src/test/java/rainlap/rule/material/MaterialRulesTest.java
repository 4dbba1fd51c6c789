package rainlap.rule.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rainlap.check.Checker;
import rainlap.check.WeakPoint;
import rainlap.material.GalvanicTable;
import rainlap.material.Metal;
import rainlap.practice.Practices;
import rainlap.rule.Finding;
import rainlap.rule.Rule;
import rainlap.rule.Written;
import rainlap.wall.Elevation;
import rainlap.wall.Stage;

class MaterialRulesTest {
    private static final String MEMBRANE = "{'id': 'M1', 'material': 'breather-membrane', 'rect': [0, 0, 1800, 1600]}";

    private static Elevation wall(String exposure, String materials, String pieces) {
        return Written.read("{'rainlap': 1, 'exposure': {" + exposure + "}, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], "
                + "'edges': ['free', 'free', 'free', 'free']}, 'materials': [" + materials + "], 'pieces': [" + MEMBRANE + "," + pieces + "]}");
    }

    private static String of(String id, String metal) {
        return "{'id': '" + id + "', 'is': 'flashing', 'metal': '" + metal + "'}";
    }

    /** Two flashings of metals a and b, the second over the first. */
    private static String lapped(String a, String b) {
        return Written.said(new AttackingPair(), wall("", of("a", a) + "," + of("b", b),
                "{'id': 'F1', 'material': 'a', 'rect': [300, 500, 600, 100]}, {'id': 'F2', 'material': 'b', 'rect': [300, 560, 600, 100]}"));
    }

    @Test
    void exactlyTheAllowedDifferenceWillDo() {
        assertEquals("holds F2 F1", lapped("silver", "nickel"));
        assertEquals("broken F2 F1 | +560 to +600, x 300 to 900 | 0.16 of 0.15", lapped("lead", "steel"));
    }

    @Test
    void theSameMetalByOtherWordsIsTheSame() {
        assertEquals("not here: no two materials that may attack each other touch, and none drains on to another", lapped("Aluminum", "aluminium"));
    }

    @Test
    void whatNoTableKnowsIsNotJudged() {
        assertEquals("cannot tell F2 F1: the metal \"unobtainium\" is not known", lapped("copper", "unobtainium"));
        assertEquals("cannot tell F2 F1: no table lists both copper and aluminium-zinc coated steel", lapped("aluminium-zinc coated steel", "copper"));
    }

    @Test
    void disagreementIsSaid() {
        Finding f = Written.findings(new AttackingPair(), wall("", of("a", "copper") + "," + of("b", "stainless steel"),
                "{'id': 'F1', 'material': 'a', 'rect': [300, 500, 600, 100]}, {'id': 'F2', 'material': 'b', 'rect': [300, 560, 600, 100]}")).get(0);
        assertTrue(f.says().endsWith("where it stays wet F1 corrodes. The anodic index has them 0.15 V apart and the potentials against copper has them 0.32 V apart; "
                + "outdoors 0.15 V is allowed. The tables disagree: only one of them forbids the pair."), f.says());
        assertEquals(0.32, f.measured().orElseThrow());
        assertTrue(f.source().document().startsWith("Potentials against copper"), f.source().text());
    }

    /** Both tables forbid nickel on stainless steel, and each names the other as the one that corrodes. */
    @Test
    void whereTheTablesNameTwoVictimsNoneIsChosen() {
        assertTrue(Verdict.of(Metal.NICKEL, Metal.STAINLESS).victimsDiffer());
        Finding f = Written.findings(new AttackingPair(), wall("", of("a", "nickel") + "," + of("b", "stainless steel"),
                "{'id': 'F1', 'material': 'a', 'rect': [300, 500, 600, 100]}, {'id': 'F2', 'material': 'b', 'rect': [300, 560, 600, 100]}")).get(0);
        assertTrue(f.says().contains("one of them corrodes") && f.says().endsWith("The tables disagree on which of the two corrodes."), f.says());
    }

    @Test
    void aVerdictIsTheSameEitherWayRound() {
        for (Metal a : Metal.values()) {
            for (Metal b : Metal.values()) {
                if (a != b) {
                    assertEquals(Verdict.of(a, b).corrodes(), Verdict.of(b, a).corrodes(), a + " and " + b);
                    assertEquals(Verdict.of(a, b).victimsDiffer(), Verdict.of(a, b).drainsHarmfully() && Verdict.of(b, a).drainsHarmfully());
                }
            }
        }
        assertEquals(Optional.of(Metal.ALUMINIUM), Verdict.of(Metal.COPPER, Metal.ALUMINIUM).corrodes());
    }

    @Test
    void mortarAttacksByRunOffTooAndOnlyFromAbove() {
        String materials = "{'id': 'bed', 'is': 'flashing', 'substance': 'mortar'}," + of("a", "aluminium");
        String high = "'rect': [300, 900, 600, 100]}", low = "'rect': [500, 300, 600, 100]}";
        assertEquals("broken F1 F2 | +300 to +400, x 500 to 900 | - of -", Written.said(new AttackingPair(),
                wall("", materials, "{'id': 'F1', 'material': 'bed', " + high + ", {'id': 'F2', 'material': 'a', " + low)));
        assertEquals("holds F1 F2", Written.said(new AttackingPair(), wall("", materials, "{'id': 'F1', 'material': 'a', " + high + ", {'id': 'F2', 'material': 'bed', " + low)));
    }

    @Test
    void aPieceBetweenKeepsApartOnlyWhereItLies() {
        String pieces = "{'id': 'F1', 'material': 'a', 'rect': [300, 500, 600, 100]}, {'id': 'T1', 'material': 'wide-flashing-tape-150', 'rect': [300, 480, 400, 150]}, "
                + "{'id': 'F2', 'material': 'b', 'rect': [300, 560, 600, 100]}";
        assertEquals("broken F2 F1 | +560 to +600, x 700 to 900 | 0.55 of 0.15",
                Written.found(new AttackingPair(), wall("", of("a", "aluminium") + "," + of("b", "copper"), pieces)));
    }

    @Test
    void whatTheFileDoesNotStateIsNotJudged() {
        String tape = "{'id': 'T1', 'material': 'foil-tape-60', 'line': [[0, 800], [1800, 800]]}";
        assertEquals("cannot tell: the exposure states no temperature_c", said(new TapeOutOfService(), "", tape));
        assertEquals("cannot tell: the exposure states no sun_days before cladding", said(new TooLongInSun(), "", tape));
        assertEquals("holds T1", said(new CorrodesWhereWet(), "", tape), "aluminium does not mind the wet");
        String iron = "{'id': 'F1', 'material': 'iron', 'rect': [0, 800, 1800, 100]}";
        assertEquals("cannot tell F1: the exposure states no rain_mm_h, so it is not known to be wet or dry", said(new CorrodesWhereWet(), "", iron));
        assertEquals("not here: the exposure states no rain: rain_mm_h is 0", said(new CorrodesWhereWet(), "'rain_mm_h': 0", iron));
        assertEquals("broken F1 | +850, x 0 to 1800 | - of -", said(new CorrodesWhereWet(), "'rain_mm_h': 0.1", iron));
        assertEquals("cannot tell T1: plain states no service_c", said(new TapeOutOfService(), "'temperature_c': [0, 30]",
                "{'id': 'T1', 'material': 'plain', 'line': [[0, 800], [1800, 800]]}"));
        assertEquals("holds M1\ncannot tell M2: no document sets a number of days, and sheet states no uv_days of its own", said(new TooLongInSun(), "'sun_days': 10",
                "{'id': 'M2', 'material': 'sheet', 'rect': [0, 100, 600, 600]}"));
    }

    private static String said(Rule rule, String exposure, String pieces) {
        return Written.said(rule, wall(exposure, "{'id': 'plain', 'is': 'tape', 'width': 60}, {'id': 'sheet', 'is': 'membrane'}, {'id': 'iron', 'is': 'flashing', 'metal': 'iron'}", pieces));
    }

    @Test
    void aMaterialIsToldOnceForAllItsPieces() {
        StringBuilder tapes = new StringBuilder();
        for (int i = 1; i <= 7; i++) {
            tapes.append(i == 1 ? "" : ",").append("{'id': 'T").append(i).append("', 'material': 'cold', 'line': [[0, ").append(i * 200).append("], [1800, ").append(i * 200).append("]]}");
        }
        Finding f = Written.findings(new TapeOutOfService(), wall("'temperature_c': [-5, 30]", "{'id': 'cold', 'is': 'tape', 'width': 60, 'service_c': [0, 40]}", tapes.toString())).get(0);
        assertEquals(7, f.pieces().size());
        assertTrue(f.says().startsWith("T1, T2, T3, T4 and 3 more (cold) works from 0 to 40 C (the file's own figure)"), f.says());
        assertEquals("+200, x 0 to 1800", f.where().inWords());
    }

    /** A copper flashing lies across an open gap of its foil: the leak and the pair are both told, neither with the other's defences. */
    @Test
    void aPairHidesNoLeakAndTakesNoWay() {
        Elevation e = Written.read("{'rainlap': 1, 'wall': {'outline': [[0,0],[1800,0],[1800,1600],[0,1600]], 'edges': ['free', 'free', 'free', 'free']}, 'materials': ["
                + of("copper", "copper") + "], 'pieces': [{'id': 'M1', 'material': 'foil-membrane', 'rect': [0, 0, 1800, 780]}, "
                + "{'id': 'M2', 'material': 'foil-membrane', 'rect': [0, 800, 1800, 800]}, {'id': 'F1', 'material': 'copper', 'rect': [400, 500, 600, 100], 'bond': ['top']}]}");
        List<Finding> all = Checker.check(e, Stage.WRAP, Practices.common()).weakPoints().stream().map(WeakPoint::finding).toList();
        Finding pair = all.stream().filter(f -> f.rule().equals("attacking-pair")).findFirst().orElseThrow();
        assertEquals(Finding.MANY, pair.defences());
        assertTrue(pair.path().isEmpty() && pair.litresPerHour().isEmpty());
        assertTrue(all.stream().anyMatch(f -> f.rule().equals("open-gap") && f.defences() == 0), all::toString);
    }

    /** The tables stand on the rule's page too. */
    @Test
    void thePageHasEveryMetalWithItsFigures() throws IOException {
        String page = Files.readString(Path.of("src/main/resources/rules/attacking-pair/page.md"), StandardCharsets.UTF_8);
        for (Metal m : Metal.values()) {
            String row = "| " + m.word() + " | " + volts(GalvanicTable.ANODIC_INDEX, m) + " | " + volts(GalvanicTable.AGAINST_COPPER, m) + " |\n";
            assertEquals(!row.contains("| - | - |"), page.contains(row), row);
        }
    }

    private static String volts(GalvanicTable t, Metal m) {
        Integer mv = t.millivolts().get(m);
        return mv == null ? "-" : (mv < 0 ? "\u2212" : "") + Verdict.volts(Math.abs(mv));
    }

    @Test
    void voltsAreWrittenToTheHundredthUnlessFiner() {
        assertEquals("0.15 0.105 0.50", String.join(" ", Verdict.volts(150), Verdict.volts(105), Verdict.volts(500)));
        assertEquals(new BigDecimal("0.15"), new BigDecimal(Verdict.volts(GalvanicTable.ALLOWED_MV)));
    }
}
