package rainlap.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import rainlap.material.EndDams;
import rainlap.material.MaterialKind;
import rainlap.material.Profile;

/**
 * The pieces of a section along the wall, each as places and their distances out: folded as a flashing is, with slopes where what lies beneath ends, over what
 * stands out beneath it, and slit where an end dam stands in its way.
 */
final class SectionRelief {
    private static final double WIDEST_DRIP = 3;
    /** Between the middles of two pieces where one follows the other, and beside a dam, printed mm. */
    private static final double CLEAR = 1.6;
    private static final double SLIT = 1.2;
    /** How far the foot of a sheet stands above the middle of a shelf, and how near to it one that ends there may be drawn, printed mm. */
    private static final double REST = 1.1;
    private static final double ENDS = 0.5;
    /** A flashing that lies on the shelf of another stands out so much further, printed mm. */
    private static final double OVER_NOSE = 1;
    /** How far a loose strip hangs over without coming down, printed mm. */
    private static final double HANGS = 1.5;
    private final CutStack stack;
    private final SectionGrid grid;
    private final IntToDoubleFunction out;
    private final double clear;
    private final Map<Integer, List<List<double[]>>> known = new HashMap<>();
    private final Set<Integer> asked = new HashSet<>();

    /**
     * @param out distance of a level from the frame's face, printed mm
     * @param step from one level to the next
     */
    SectionRelief(CutStack stack, SectionGrid grid, IntToDoubleFunction out, double step) {
        this.stack = stack;
        this.grid = grid;
        this.out = out;
        this.clear = Math.min(step, CLEAR);
    }

    /** Lines of a piece along the wall, ascending but where a flashing is folded. */
    List<List<double[]>> lines(CutStack.Strand s, boolean folds) {
        List<List<double[]>> there = known.get(s.number());
        if (there == null) {
            asked.add(s.number()); // pieces may lie in a ring along the cut: then it stops here
            there = found(s, folds);
            asked.remove(s.number());
            known.put(s.number(), there);
        }
        return there;
    }

    private List<List<double[]>> found(CutStack.Strand s, boolean folds) {
        List<List<double[]>> lines = new ArrayList<>();
        for (List<CutStack.Step> run : runs(s.steps())) {
            if (folds) {
                lines.add(grid.plumb() ? bent(s, run) : dammed(s, run));
            } else if (isSoft(s)) {
                slit(s, isLoose(s) ? unstuck(run) : run).stream().map(part -> above(s, part)).forEach(part -> lines.add(Over.all(part, beneath(s, part), clear, grid)));
            } else {
                lines.add(sloped(run));
            }
        }
        return lines;
    }

    /** A loose strip is not pressed down at its ends: one that just hangs over the end of what lies beneath goes on as it was. */
    private List<CutStack.Step> unstuck(List<CutStack.Step> run) {
        List<CutStack.Step> steps = new ArrayList<>(run);
        int last = run.size() - 1;
        for (int end : last > 0 ? List.of(0, last) : List.<Integer>of()) {
            CutStack.Step over = run.get(end), next = run.get(end == 0 ? 1 : last - 1);
            if (over.level() < next.level() && over.to() - over.from() < grid.units(HANGS)) {
                steps.set(end, new CutStack.Step(over.from(), over.to(), next.level()));
            }
        }
        return steps;
    }

    private static boolean isLoose(CutStack.Strand s) {
        return s.piece().material().kind() != MaterialKind.MEMBRANE && s.piece().bond().isLoose();
    }

    private static boolean isSoft(CutStack.Strand s) {
        return CutStack.goesRound(s.piece()) && s.piece().material().kind() != MaterialKind.SEALANT;
    }

    private static boolean folds(CutStack.Strand s) {
        return s.piece().material().kind() == MaterialKind.FLASHING;
    }

    /** What lies beneath a line somewhere. */
    private List<Over.Beneath> beneath(CutStack.Strand s, List<double[]> line) {
        List<Over.Beneath> all = new ArrayList<>();
        for (CutStack.Strand o : stack.strands()) {
            boolean may = o.number() != s.number() && (isSoft(o) || folds(o) && !stack.caps(o.piece())) && !asked.contains(o.number()) && stack.isOutside(s, o);
            if (may) {
                lines(o, folds(o)).stream().flatMap(l -> folds(o) && grid.plumb() ? Stream.of(new Over.Beneath(l, true), new Over.Beneath(raised(l), true))
                        : Stream.of(new Over.Beneath(l, false))).filter(b -> b.meets(line)).forEach(all::add);
            }
        }
        return all;
    }

    /** A flashing higher up by what keeps a sheet off its shelf. */
    private List<double[]> raised(List<double[]> flashing) {
        return flashing.stream().map(p -> at(p[0] + grid.units(REST), p[1])).toList();
    }

    /** A line that ends on the shelf of a flashing beneath it, drawn standing on that; one that would be turned in through a flashing is cut there. */
    private List<double[]> above(CutStack.Strand s, List<double[]> line) {
        double from = line.get(0)[0], to = line.get(line.size() - 1)[0], foot = from;
        for (CutStack.Strand o : stack.strands()) {
            if (grid.plumb() && folds(o) && !stack.caps(o.piece()) && stack.isOutside(s, o)) {
                for (List<double[]> l : lines(o, true)) {
                    double shelf = l.get(l.size() - 2)[0];
                    boolean stands = Math.abs(from - shelf) <= grid.units(ENDS), through = Math.abs(from - stack.frameFrom()) <= 1 && l.get(0)[0] <= from && from < l.get(l.size() - 1)[0];
                    foot = stands ? Math.max(foot, shelf + grid.units(REST)) : through ? Math.max(foot, from + 2) : foot;
                }
            }
        }
        return foot > from && foot + 1 < to ? Over.part(line, foot, to) : line;
    }

    /** A run in parts, short of the end dams of flashings beneath it: beyond a dam it lies as if the flashing were not there. */
    private List<List<double[]>> slit(CutStack.Strand s, List<CutStack.Step> run) {
        List<Double> dams = grid.plumb() ? List.of() : stack.strands().stream().filter(o -> folds(o) && stack.isOutside(s, o)).flatMap(o -> dams(o).stream()).sorted().toList();
        List<List<double[]>> parts = new ArrayList<>();
        double from = Double.NEGATIVE_INFINITY, room = grid.units(SLIT);
        for (double to : Stream.concat(dams.stream(), Stream.of(Double.POSITIVE_INFINITY)).toList()) {
            double low = from, high = to;
            List<CutStack.Step> part = run.stream().filter(t -> t.from() >= low - 1 && t.to() <= high + 1).toList();
            if (!part.isEmpty() && part.get(part.size() - 1).to() - part.get(0).from() > 2 * room) {
                parts.add(Over.part(sloped(part), low + room, high - room));
            }
            from = to;
        }
        return parts.isEmpty() ? List.of(sloped(run)) : parts;
    }

    /** Where ends of a flashing are turned up in a cut from above. */
    private List<Double> dams(CutStack.Strand s) {
        Profile folded = s.piece().material().profile();
        List<Double> at = new ArrayList<>();
        boolean high = folded.endDamMm().orElse(0) > 0 && folded.depthMm().orElse(0) > 0;
        for (List<CutStack.Step> run : high ? runs(s.steps()) : List.<List<CutStack.Step>>of()) {
            double from = run.get(0).from(), to = run.get(run.size() - 1).to();
            if (folded.endDams().filter(EndDams::atLeft).isPresent() && from > stack.cut().from() + 1 && !goesOn(s, from)) {
                at.add(from);
            }
            if (folded.endDams().filter(EndDams::atRight).isPresent() && to < stack.cut().to() - 1 && !goesOn(s, to)) {
                at.add(to);
            }
        }
        return at;
    }

    /** Whether another flashing goes on where one ends: that is a joint and no end. */
    private boolean goesOn(CutStack.Strand s, double end) {
        return stack.strands().stream().filter(o -> o.number() != s.number() && folds(o)).flatMap(o -> o.steps().stream()).anyMatch(t -> t.from() < end && end < t.to());
    }

    /** A flashing seen from above, its ends turned up as far out as it is deep where the file says so and the cut holds them. */
    private List<double[]> dammed(CutStack.Strand s, List<CutStack.Step> run) {
        double far = most(run) + grid.length(s.piece().material().profile().depthMm().orElse(0) * 100);
        List<double[]> all = sloped(run);
        double from = run.get(0).from(), to = run.get(run.size() - 1).to();
        for (double dam : dams(s)) {
            if (dam == from) {
                all.add(0, new double[] {from, far});
            } else if (dam == to) {
                all.add(new double[] {to, far});
            }
        }
        return all;
    }

    private double most(List<CutStack.Step> run) {
        return out.applyAsDouble(run.stream().mapToInt(CutStack.Step::level).max().orElse(0));
    }

    /** A flashing with its upstand, its shelf and its drip where the file gives them; else with a kicked foot. */
    private List<double[]> bent(CutStack.Strand s, List<CutStack.Step> run) {
        double foot = run.get(0).from(), top = run.get(run.size() - 1).to();
        double off = Math.max(most(run), overSoft(s, foot, top)); // stiff: it stands off by the most that lies beneath it
        Profile folded = s.piece().material().profile();
        OptionalDouble upstand = folded.upstandMm(), deep = folded.depthMm();
        if (upstand.isPresent() && deep.isPresent()) {
            double drip = Math.min(grid.length(folded.dripMm().orElse(0) * 100), WIDEST_DRIP);
            double slope = Math.tan(Math.toRadians(folded.fallDeg().orElse(5))) * deep.getAsDouble() * 100, fall = Math.min(slope, top - foot);
            double down = folded.turnDownMm().orElse(0) * 100;
            double own = Math.min(top, Math.max(foot, top - upstand.getAsDouble() * 100)), shelf = overShelf(s, own), front = shelf - fall;
            off = overNoses(s, off, shelf, top);
            double nose = off + grid.length(deep.getAsDouble() * 100) + (shelf > own ? OVER_NOSE : 0);
            double lowest = folded.turnDownMm().isPresent() ? front - down : Math.min(foot, front);
            return List.of(at(lowest, nose + drip), at(Math.min(front, lowest + grid.units(drip)), nose), at(front, nose), at(shelf, off), at(top, off));
        }
        return List.of(at(foot, off + 1.4), at(foot + Math.min(grid.units(1), (top - foot) / 3), off), at(top, off));
    }

    /** A shelf's level, or just above that of a flashing beneath it. */
    private double overShelf(CutStack.Strand s, double shelf) {
        double up = shelf;
        for (List<double[]> l : flashingsBeneath(s)) {
            double other = l.get(l.size() - 2)[0];
            up = Math.abs(other - shelf) < grid.units(REST) ? other + grid.units(REST) : up;
        }
        return up;
    }

    /** How far an upstand stands off: clear of the shelves of flashings beneath it that lie higher than its own. */
    private double overNoses(CutStack.Strand s, double off, double shelf, double top) {
        double far = off;
        for (List<double[]> l : flashingsBeneath(s)) {
            boolean higher = l.get(l.size() - 2)[0] > shelf + grid.units(REST) && l.get(0)[0] < top;
            far = higher ? Math.max(far, l.stream().mapToDouble(p -> p[1]).max().orElse(0) + clear) : far;
        }
        return far;
    }

    /** How far a stiff piece stands off what comes up beneath it from under its edges. */
    private double overSoft(CutStack.Strand s, double foot, double top) {
        return stack.strands().stream().filter(o -> o.number() != s.number() && isSoft(o) && !asked.contains(o.number()) && stack.isOutside(s, o))
                .flatMap(o -> lines(o, false).stream()).flatMap(List::stream).filter(p -> foot - 1 < p[0] && p[0] < top + 1).mapToDouble(p -> p[1] + clear).max().orElse(0);
    }

    private List<List<double[]>> flashingsBeneath(CutStack.Strand s) {
        return stack.strands().stream().filter(o -> o.number() != s.number() && folds(o) && !stack.caps(o.piece()) && !asked.contains(o.number()) && stack.isOutside(s, o))
                .flatMap(o -> lines(o, true).stream()).toList();
    }

    private static double[] at(double place, double out) {
        return new double[] {place, out};
    }

    /** Places along the run with their distance out; a change of level slopes on the side where less lies beneath. */
    List<double[]> sloped(List<CutStack.Step> run) {
        List<double[]> line = new ArrayList<>();
        line.add(at(run.get(0).from(), out.applyAsDouble(run.get(0).level())));
        for (int i = 0; i + 1 < run.size(); i++) {
            CutStack.Step a = run.get(i), b = run.get(i + 1);
            double oa = out.applyAsDouble(a.level()), ob = out.applyAsDouble(b.level());
            CutStack.Step lower = oa > ob ? b : a;
            double ramp = Math.min(grid.units(Math.abs(oa - ob) * 1.1 + 0.6), 0.45 * (lower.to() - lower.from()));
            double flat = Math.min(grid.units(0.5), ramp / 3);
            if (oa > ob) {
                line.add(at(a.to() + flat, oa));
                line.add(at(a.to() + ramp, ob));
            } else {
                line.add(at(a.to() - ramp, oa));
                line.add(at(a.to() - flat, ob));
            }
        }
        line.add(at(run.get(run.size() - 1).to(), out.applyAsDouble(run.get(run.size() - 1).level())));
        return line;
    }

    /** Steps that go on without a break. */
    static List<List<CutStack.Step>> runs(List<CutStack.Step> steps) {
        List<List<CutStack.Step>> all = new ArrayList<>();
        for (CutStack.Step s : steps) {
            List<CutStack.Step> last = all.isEmpty() ? null : all.get(all.size() - 1);
            if (last != null && last.get(last.size() - 1).to() == s.from()) {
                last.add(s);
            } else {
                all.add(new ArrayList<>(List.of(s)));
            }
        }
        return all;
    }
}
