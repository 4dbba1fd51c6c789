package rainlap.rule.cavity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.material.MaterialKind;
import rainlap.measure.LengthText;
import rainlap.practice.Limit;
import rainlap.practice.LimitValue;
import rainlap.rule.Asked;
import rainlap.rule.Cladding;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.PieceWords;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.stack.Face;
import rainlap.wall.Surface;

/** Between wrap and cladding there is no drainage gap, or one less deep or less open than asked. */
public final class ShallowCavity implements Rule {
    static final RuleInfo INFO = RuleInfo.of("shallow-cavity", "cavity too shallow", RuleInfo.Theme.CAVITY,
            Limit.CAVITY_DEPTH, Limit.CAVITY_OPEN);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Face> sheets = Cladding.sheets(e), bare = new ArrayList<>();
        if (sheets.isEmpty()) {
            return Stream.of(Cladding.none());
        }
        Set<Face> battens = new LinkedHashSet<>();
        for (Face sheet : sheets) {
            List<Face> under = Battens.under(e, sheet);
            battens.addAll(under);
            if (under.isEmpty() && Cladding.behind(e, sheet, MaterialKind.CLADDING).isEmpty()) {
                bare.add(sheet);
            }
        }
        Stream<Outcome> without = bare.isEmpty() ? Stream.empty() : Stream.of(withoutBattens(e, bare));
        return Stream.concat(Stream.concat(without, depths(e, battens, sheets)), FilledCavity.judge(e, sheets));
    }

    /** Battens of one depth together: they are mended together. */
    private static Stream<Outcome> depths(Evidence e, Set<Face> battens, List<Face> sheets) {
        LimitValue asked = e.practice().get(Limit.CAVITY_DEPTH);
        List<Outcome> out = new ArrayList<>();
        Map<Double, List<Face>> shallow = new TreeMap<>();
        for (Face b : battens.stream().sorted(Comparator.comparingInt(Face::number)).toList()) {
            OptionalDouble depth = Battens.standOff(e, b);
            if (depth.isEmpty()) {
                out.add(new Outcome.CannotTell(List.of(b.piece().id()), "neither the batten nor its material states its depth"));
            } else if (asked.isMetBy(depth.getAsDouble())) {
                out.add(Outcome.Holds.of(b.piece().id()));
            } else {
                shallow.computeIfAbsent(depth.getAsDouble(), k -> new ArrayList<>()).add(b);
            }
        }
        shallow.forEach((depth, all) -> out.add(shallow(e, all, depth, asked)));
        if (out.isEmpty() && sheets.size() > 1) {
            out.add(new Outcome.DoesNotApply("no batten lies behind the cladding"));
        }
        return out.stream();
    }

    private static Outcome shallow(Evidence e, List<Face> battens, double depthMm, LimitValue asked) {
        List<String> ids = ids(battens);
        String depth = LengthText.mmBeside(Grid.of(depthMm), asked.hundredths());
        Place where = Place.area(e.elevation(), Surface.WALL, battens.stream().map(Face::region).toList());
        return Finding.of(INFO, where, ids).asks(asked).measures(Grid.of(depthMm)).reads(depth + " deep", asked.number() + " deep")
                .says("The cavity at " + PieceWords.list(ids) + " is " + depth + " deep. " + Asked.sentence(asked),
                        "Take the cladding off, and use battens " + asked.number() + " deep, or pack " + PieceWords.list(ids) + " out by "
                                + LengthText.mmUp(asked.hundredths() - Grid.of(depthMm)) + " with strips as wide as the battens; lengthen the screws by as much. "
                                + "Work at height from a scaffold or platform.");
    }

    private static Outcome withoutBattens(Evidence e, List<Face> sheets) {
        LimitValue asked = e.practice().get(Limit.CAVITY_DEPTH);
        List<String> ids = ids(sheets);
        Place where = Place.area(e.elevation(), Surface.WALL, sheets.stream().map(Face::region).toList());
        return Finding.of(INFO, where, ids).asks(asked).measures(0).reads("no battens", asked.number() + " deep")
                .says(PieceWords.does(ids, "lies", "lie") + " on the wrap without battens: what gets behind cannot drain. " + Asked.sentence(asked),
                        "Take " + PieceWords.list(ids) + " off, fix upright battens " + asked.number() + " deep to the frame through the wrap, and fix the cladding to them. "
                                + "Sheet edges cut: wear gloves; work at height from a scaffold or platform.");
    }

    private static List<String> ids(List<Face> faces) {
        return faces.stream().map(f -> f.piece().id()).distinct().toList();
    }
}
