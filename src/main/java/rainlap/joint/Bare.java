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
import rainlap.geom.Segment;
import rainlap.stack.Crew;
import rainlap.stack.Face;
import rainlap.stack.Stack;
import rainlap.wall.Elevation;
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
        return of(stack, joints, Crew.ALONE);
    }

    public static List<Bare> of(Stack stack, Joints joints, Crew crew) {
        List<Box> hints = new ArrayList<>();
        joints.open().stream().filter(o -> o.surface().isWall()).forEach(o -> hints.add(o.line().box()));
        hints.addAll(crew.gather(borders(stack.elevation()).toList(), run -> run.stream().flatMap(some -> uncovered(stack, some)).toList()));
        List<Bare> wide = clusters(hints).stream().flatMap(box -> within(stack, box).filter(r -> isBareWall(stack, r))).map(Bare::new).toList();
        return Stream.concat(wide.stream(), narrow(stack, joints, hints, wide)).distinct()
                .sorted(Comparator.comparing((Bare b) -> b.region.box().minX()).thenComparing(b -> b.region.box().minY())
                        .thenComparing(b -> b.region.toString()))
                .toList();
    }

    /** The borders of the wall, wall on the left: those of one opening or penetration together. */
    private static Stream<List<Segment>> borders(Elevation e) {
        Stream<Region> inside = Stream.concat(e.openings().stream().map(o -> Region.of(o.rect())), e.penetrations().stream().map(Penetration::region));
        return Stream.concat(e.outline().edges().stream().map(o -> List.of(o.line())), inside.map(r -> r.edges().stream().map(Segment::reversed).toList()));
    }

    /** What no sheet covers of some borders that lie near one another. */
    private static Stream<Box> uncovered(Stack stack, List<Segment> borders) {
        List<Face> near = new ArrayList<>();
        stack.meeting(Surface.WALL, borders.stream().map(Segment::box).reduce(Box::join).orElseThrow().grow(LEAST), f -> {
            if (Sheets.isSheet(f) && Sheets.covers(f)) {
                near.add(f);
            }
        });
        return borders.stream().flatMap(border -> {
            EdgeFrame e = EdgeFrame.of(border);
            Intervals left = Intervals.of(0, e.length()).minus(Intervals.unionOf(near.stream().map(f -> e.inside(f.region(), e.side())).toList()));
            return IntStream.range(0, left.count()).mapToObj(i -> new Segment(e.at(left.from(i)), e.at(left.to(i))).box());
        });
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
     * What else lies bare, so narrow that it might be a gap: between a sheet's open edge and an adhered strip that does not reach it, for strips close gaps and form none, so no joint
     * says that nothing lies there. Not what lies between sheets that face one another, nor what is no larger than a gap is wide where such a gap opens into it.
     */
    private static Stream<Bare> narrow(Stack stack, Joints joints, List<Box> hints, List<Bare> wide) {
        List<Box> near = hints.stream().map(b -> b.grow(JointFinder.GAP)).toList();
        List<Region> gaps = joints.all().stream().filter(j -> !j.kind().isLap() && j.surface().isWall())
                .flatMap(j -> j.runs().stream().filter(r -> r.length() > 0).map(r -> r.strip(LEAST))).toList();
        List<Region> told = Stream.concat(wide.stream().map(Bare::region), gaps.stream()).toList();
        BoxTree tree = new BoxTree(told.stream().map(Region::box).toList());
        return clusters(near).stream().flatMap(box -> within(stack, box)).flatMap(bare -> {
            List<Region> known = IntStream.of(tree.meeting(bare.box())).mapToObj(told::get).toList();
            boolean opens = !Overlay.intersection(List.of(bare), known).stream().allMatch(g -> Overlay.vanishes(g, LEAST / 2 + 1));
            return Overlay.difference(List.of(bare), known).stream().filter(r -> !(opens && isNoLargerThanAGap(r.box())));
        }).filter(r -> (!Overlay.vanishes(r, LEAST / 2) || isHole(stack, r)) && Overlay.vanishes(r, JointFinder.GAP / 2 + 1)).map(Bare::new);
    }

    /** Whether it is a hole drawn in a sheet, all of it, and nothing is to come through there: no misfit, however small. */
    private static boolean isHole(Stack stack, Region bare) {
        Box around = bare.box().grow(LEAST);
        return borders(stack.elevation()).flatMap(List::stream).noneMatch(b -> b.box().meets(around))
                && stack.meeting(Surface.WALL, around).stream().filter(Sheets::covers).flatMap(f -> f.region().holes().stream()).anyMatch(h -> h.box().equals(bare.box()));
    }

    private static boolean isNoLargerThanAGap(Box b) {
        return Math.max(b.width(), b.height()) <= JointFinder.GAP;
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
        stack.elevation().openingsMeeting(box).forEach(o -> over.add(Region.of(o.rect())));
        stack.elevation().penetrationsMeeting(box).forEach(p -> over.add(p.region()));
        List<Region> wall = Overlay.intersection(List.of(stack.elevation().outline().region()), List.of(Region.of(box)));
        return Overlay.difference(wall, over).stream();
    }

    /** Whether a bare part is more than a strip of nothing between facing edges. */
    private static boolean isBareWall(Stack stack, Region bare) {
        if (!Overlay.vanishes(bare, JointFinder.GAP / 2)) {
            return true;
        }
        boolean thin = Overlay.vanishes(bare, LEAST / 2);
        return !thin && borders(stack.elevation()).flatMap(List::stream).anyMatch(b -> isBorderOf(b, bare));
    }

    private static boolean isBorderOf(Segment border, Region bare) {
        EdgeFrame e = EdgeFrame.of(border);
        return border.box().meets(bare.box()) && e.inside(bare, e.side()).total() > JointFinder.GAP;
    }
}
