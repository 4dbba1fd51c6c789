package rainlap.rule.cavity;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.LevelBattens;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** How much of the cavity, seen from outside, stays open between the battens that lie against what is behind it. */
final class FilledCavity {
    /** Areas are sums of many corners: a billionth is nothing. */
    private static final double NOTHING = 1e-9;

    private FilledCavity() {}

    static Stream<Outcome> judge(Evidence e, List<Face> sheets) {
        Set<Face> behind = new HashSet<>();
        List<Region> over = new ArrayList<>();
        for (Face sheet : sheets) {
            List<Face> here = Cladding.behind(e, sheet, MaterialKind.BATTEN).stream().filter(f -> !Battens.isMesh(f) && !LevelBattens.isPackedOff(e.stack(), f)).toList();
            behind.addAll(here);
            if (!here.isEmpty()) {
                over.add(sheet.region());
            }
        }
        return behind.isEmpty() ? Stream.empty() : Stream.of(judge(e, behind.stream().sorted(Comparator.comparingInt(Face::number)).toList(), Overlay.union(over)));
    }

    private static Outcome judge(Evidence e, List<Face> battens, List<Region> clad) {
        List<Region> filled = Overlay.intersection(clad, Overlay.union(battens.stream().map(Face::region).toList()));
        double open = 1 - area(filled) / area(clad);
        LimitValue asked = e.practice().get(Limit.CAVITY_OPEN);
        List<String> ids = battens.stream().map(f -> f.piece().id()).distinct().toList();
        return asked.isMetBy(open + NOTHING) ? Outcome.Holds.of(ids) : broken(e, battens, ids, open, asked);
    }

    private static double area(List<Region> regions) {
        return regions.stream().mapToDouble(Region::areaMm2).sum();
    }

    /** Parts in a hundred, cut off and not rounded: what is too little never reads as enough. */
    private static BigDecimal hundredths(double share) {
        return BigDecimal.valueOf(share * 100 + NOTHING).setScale(1, RoundingMode.DOWN).stripTrailingZeros();
    }

    private static Outcome broken(Evidence e, List<Face> battens, List<String> ids, double open, LimitValue asked) {
        BigDecimal most = hundredths(Math.min(1, asked.value())); // a file may ask for more than all of it
        String there = hundredths(open).toPlainString(), wanted = most.toPlainString();
        return Finding.of(ShallowCavity.INFO, Place.area(e.elevation(), Surface.WALL, battens.stream().map(Face::region).toList()), ids).asks(asked).figure(open)
                .reads(there + " of 100 open", wanted + " of 100 open")
                .says("Between the battens only " + there + " of each 100 parts of the cavity stay open: there is little room for water to run down. "
                        + Asked.sentence(asked, wanted + " of each 100 parts open"),
                        "Take the cladding off and use fewer or narrower battens, to cover at most " + BigDecimal.valueOf(100).subtract(most).toPlainString()
                        + " of each 100 parts of the wall behind it; or set those that lie across on upright ones. Sheet edges cut: wear gloves; work at height from a scaffold or platform.");
    }
}
