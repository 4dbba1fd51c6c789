package rainlap.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.geom.EdgeFrame;
import rainlap.geom.Intervals;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.geom.Ring;
import rainlap.geom.Segment;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
import rainlap.wall.Opening;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Penetration;
import rainlap.wall.Surface;

/**
 * A part of the wall, inside the outline and outside openings and penetrations, that no sheet and no adhered strip covers. Strips of
 * nothing between facing edges of two sheets ({@link JointKind#BUTT}, {@link JointKind#GAP}) are joints, not bare wall, and are left out.
 *
 * <p>Every bare part is bordered by open edges of sheets and by uncovered stretches of the outline, of openings and of penetrations;
 * these are gathered into clusters less than a gap apart, and the bare part of each cluster's box is found by overlay there alone. A gap that
 * opens into a bare part is cut off at that box.
 *
 * @param region in wall coordinates
 */
public record Bare(Region region) {
    /** Strips at the outline narrower than this are within the drawing's own tolerance: 1 mm. */
    static final long LEAST = JointFinder.BUTT;

    public static List<Bare> of(Stack stack, Joints joints) {
        List<Box> hints = new ArrayList<>();
        joints.open().stream().filter(o -> o.surface().isWall()).forEach(o -> hints.add(o.line().box()));
        borders(stack.elevation()).forEach(b -> uncovered(stack, b, hints));
        List<Bare> wide = clusters(hints).stream().flatMap(box -> within(stack, box).filter(r -> isBareWall(stack, r))).map(Bare::new).toList();
        return Stream.concat(wide.stream(), besideStrips(stack, joints, wide)).distinct()
                .sorted(Comparator.comparing((Bare b) -> b.region.box().minX()).thenComparing(b -> b.region.box().minY())
                        .thenComparing(b -> b.region.toString()))
                .toList();
    }

    /** The borders of the wall, wall on the left. */
    private static List<Segment> borders(Elevation e) {
        List<Segment> out = new ArrayList<>(e.outline().edges().stream().map(OutlineEdge::line).toList());
        e.openings().forEach(o -> Region.of(o.rect()).edges().forEach(s -> out.add(s.reversed())));
        e.penetrations().forEach(p -> p.region().edges().forEach(s -> out.add(s.reversed())));
        return out;
    }

    private static void uncovered(Stack stack, Segment border, List<Box> hints) {
        EdgeFrame e = EdgeFrame.of(border);
        List<Intervals> over = new ArrayList<>();
        stack.meeting(Surface.WALL, border.box().grow(LEAST), f -> {
            if (Sheets.isSheet(f)) {
                over.add(e.inside(f.region(), e.side()));
            }
        });
        Intervals left = Intervals.of(0, e.length()).minus(Intervals.unionOf(over));
        for (int i = 0; i < left.count(); i++) {
            hints.add(new Segment(e.at(left.from(i)), e.at(left.to(i))).box());
        }
    }

    /** Boxes joined while any two lie less than a gap apart: the mouth of a gap parts the border of a bare place. */
    private static List<Box> clusters(List<Box> boxes) {
        List<Box> now = boxes;
        while (true) {
            List<Box> next = joinedOnce(now);
            if (next.size() == now.size()) {
                return next;
            }
            now = next;
        }
    }

    private static List<Box> joinedOnce(List<Box> boxes) {
        BoxTree tree = new BoxTree(boxes);
        int[] head = new int[boxes.size()];
        for (int i = 0; i < head.length; i++) {
            head[i] = i;
        }
        for (int i = 0; i < head.length; i++) {
            int me = i;
            tree.query(boxes.get(i).grow(JointFinder.GAP), j -> head[root(head, j)] = root(head, me));
        }
        Map<Integer, Box> joined = new TreeMap<>();
        for (int i = 0; i < head.length; i++) {
            joined.merge(root(head, i), boxes.get(i), Box::join);
        }
        return List.copyOf(joined.values());
    }

    private static int root(int[] head, int i) {
        int at = i;
        while (head[at] != at) {
            head[at] = head[head[at]];
            at = head[at];
        }
        return at;
    }

    /**
     * Between a sheet's open edge and an adhered strip that does not reach it: strips close gaps and form none, so no joint says that nothing lies there. Not where two sheets
     * face one another as well, and not where the strip borders on less than a gap's width of it.
     */
    private static Stream<Bare> besideStrips(Stack stack, Joints joints, List<Bare> wide) {
        List<Box> edges = joints.open().stream().filter(o -> o.surface().isWall()).map(o -> o.line().box().grow(JointFinder.GAP)).toList();
        List<Region> told = Stream.concat(wide.stream().map(Bare::region), joints.all().stream().filter(j -> !j.kind().isLap() && j.surface().isWall())
                .flatMap(j -> j.runs().stream().filter(r -> r.length() > 0).map(Bare::between))).toList();
        BoxTree tree = new BoxTree(told.stream().map(Region::box).toList());
        return clusters(edges).stream().flatMap(box -> within(stack, box))
                .flatMap(r -> Overlay.difference(List.of(r), IntStream.of(tree.meeting(r.box())).mapToObj(told::get).toList()).stream())
                .filter(r -> !Overlay.vanishes(r, LEAST / 2) && Overlay.vanishes(r, JointFinder.GAP / 2 + 1) && alongStrips(stack, r) > JointFinder.GAP).map(Bare::new);
    }

    /** The strip of nothing along a run of a butt or gap, which has the outer piece on its left, and a tolerance round it. */
    private static Region between(Run r) {
        EdgeFrame e = EdgeFrame.of(r.line());
        double from = -LEAST, to = e.length() + LEAST, far = -r.lap().greatest() - LEAST;
        return new Region(Ring.of(List.of(e.at(from, LEAST), e.at(from, far), e.at(to, far), e.at(to, LEAST))), List.of());
    }

    /** How much of a bare part's border is that of strips. */
    private static double alongStrips(Stack stack, Region bare) {
        double length = 0;
        for (Segment s : bare.edges()) {
            EdgeFrame e = EdgeFrame.of(s);
            List<Intervals> on = new ArrayList<>();
            stack.meeting(Surface.WALL, s.box().grow(1), f -> {
                if (Sheets.isStrip(f)) {
                    on.add(e.inside(f.region(), -e.side()));
                }
            });
            length += Intervals.unionOf(on).total();
        }
        return length;
    }

    private static Stream<Region> within(Stack stack, Box box) {
        if (box.width() == 0 || box.height() == 0) {
            return Stream.of();
        }
        List<Region> over = new ArrayList<>();
        for (Face f : stack.meeting(Surface.WALL, box)) {
            if (Sheets.covers(f)) {
                over.add(f.region());
            }
        }
        stack.elevation().openings().stream().map(Opening::rect).filter(r -> r.meets(box)).map(Region::of).forEach(over::add);
        stack.elevation().penetrations().stream().map(Penetration::region).filter(r -> r.box().meets(box)).forEach(over::add);
        List<Region> wall = Overlay.intersection(List.of(stack.elevation().outline().region()), List.of(Region.of(box)));
        return Overlay.difference(wall, over).stream();
    }

    /** Whether a bare part is more than a strip of nothing between facing edges. */
    private static boolean isBareWall(Stack stack, Region bare) {
        if (!Overlay.vanishes(bare, JointFinder.GAP / 2)) {
            return true;
        }
        boolean thin = Overlay.vanishes(bare, LEAST / 2);
        return !thin && borders(stack.elevation()).stream().anyMatch(b -> isBorderOf(b, bare));
    }

    private static boolean isBorderOf(Segment border, Region bare) {
        EdgeFrame e = EdgeFrame.of(border);
        return border.box().meets(bare.box()) && e.inside(bare, e.side()).total() > JointFinder.GAP;
    }
}
