package rainlap.rule.face;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Grid;
import rainlap.joint.Joint;
import rainlap.joint.Run;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.MembraneJoints;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.source.Source;
import rainlap.stack.Face;
import rainlap.wall.Exposure;

/** Sheets that meet edge to edge, or nearly, have no room to grow over the stated range of temperature. */
public final class NoRoomToMove implements Rule {
    static final RuleInfo INFO = RuleInfo.of("no-room-to-move", "no room for heat to move it", RuleInfo.Theme.FACE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        return SheetJoints.judge(e, SheetJoints.open(e).toList(), "no two sheets of cladding meet edge to edge or stand a little apart", j -> judge(e, j));
    }

    private static Stream<Outcome> judge(Evidence e, Joint j) {
        List<String> pieces = List.of(j.outer().piece().id(), j.inner().piece().id());
        Optional<Exposure.Span> range = e.elevation().exposure().temperatureC();
        if (range.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(pieces, "the exposure states no temperature_c"));
        }
        Optional<Expansion> outer = Expansion.of(j.outer()), inner = Expansion.of(j.inner());
        if (outer.isEmpty() || inner.isEmpty()) {
            return Stream.of(new Outcome.CannotTell(pieces, "its material states no metal whose expansion is known"));
        }
        double kelvin = range.get().hi() - range.get().lo();
        List<Joint.Stretch> tight = MembraneJoints.parts(e, j, r -> r.lap().below(needed(j, r, kelvin)));
        return tight.isEmpty() ? Stream.of(SheetJoints.holds(j)) : tight.stream().map(s -> broken(e, j, s, kelvin));
    }

    /** Fixed at mid-length, each end moves half: the gap takes half of the movement of both, grid units. */
    private static double needed(Joint j, Run r, double kelvin) {
        return needed(j, SheetJoints.isPlumb(r), kelvin);
    }

    private static double needed(Joint j, boolean plumb, double kelvin) {
        return half(j.outer(), plumb, kelvin) + half(j.inner(), plumb, kelvin);
    }

    private static double half(Face sheet, boolean plumb, double kelvin) {
        long length = plumb ? sheet.box().width() : sheet.box().height();
        return Expansion.of(sheet).orElseThrow().perKelvin() * length * kelvin / 2;
    }

    private static Outcome broken(Evidence e, Joint j, Joint.Stretch s, double kelvin) {
        String outer = j.outer().piece().id(), inner = j.inner().piece().id();
        Place where = Place.line(e.elevation(), j.surface(), s.line());
        boolean plumb = where.box().height() > where.box().width();
        long needed = (long) Math.ceil(needed(j, plumb, kelvin) - 1e-6);
        String gap = LengthText.mm(s.least()), asked = LengthText.mm(needed);
        Source source = Expansion.SOURCE;
        return Finding.of(INFO, where, List.of(outer, inner)).source(source).measures(s.least()).requires(needed).joint(j.id())
                .reads("gap of " + gap, "gap of " + asked)
                .says(outer + " and " + inner + " stand " + gap + " apart at " + where.inWords() + ". Over " + Math.round(kelvin) + " degrees they grow by " + asked
                        + " between them (" + Expansion.of(j.outer()).orElseThrow().words() + ", each end by half): they will buckle or shear their screws. " + source.document()
                        + " gives the figures.",
                        "Cut one sheet back so that at least " + LengthText.mmUp(Math.max(needed, Grid.of(1))) + " stays between them when cold, with a trim over the gap that is fixed on one side"
                                + " only. Sheet edges cut: wear gloves and eye protection.");
    }
}
