package rainlap.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.wall.Cut;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** One piece of the building as some walls draw it: as a rule one wall; one that is drawn from both sides of a corner, two or more. */
final class Sheet {
    /** Further than anything is drawn. */
    private static final long FAR = 1L << 40;

    private final List<Part> parts = new ArrayList<>();

    /**
     * What one wall draws of it.
     *
     * @param flat the number of the wall, from left to right
     * @param piece where it stands here, shapes and cuts named as here, {@code under} as its own wall names them
     */
    record Part(int flat, Piece piece) {
        List<Region> onWall() {
            return piece.shapes().stream().filter(s -> s.on().isWall()).flatMap(s -> s.regions().stream()).toList();
        }
    }

    Sheet(Part only) {
        parts.add(only);
    }

    List<Part> parts() {
        return parts;
    }

    Optional<Part> of(int flat) {
        return parts.stream().filter(p -> p.flat() == flat).findFirst();
    }

    /** Takes in what another wall draws of the same piece. */
    void add(Part other) {
        parts.add(other);
        parts.sort(Comparator.comparingInt(Part::flat));
    }

    /** Gives up what one wall draws, as a piece of its own. */
    Sheet without(Part part) {
        parts.remove(part);
        return new Sheet(part);
    }

    /** All of it: on each wall as that wall draws it, also where it is drawn from the wall next to it. */
    List<Shape> shapes(List<Corner> corners) {
        if (parts.size() == 1) {
            return parts.get(0).piece().shapes();
        }
        List<Region> onWall = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            int flat = parts.get(i).flat();
            Box own = new Box(i == 0 ? -FAR : corners.get(flat - 1).left(), -FAR, i == parts.size() - 1 ? FAR : corners.get(flat).left(), FAR);
            onWall.addAll(parts.get(i).onWall().stream().flatMap(r -> within(r, own).stream()).toList());
        }
        Stream<Shape> others = parts.stream().flatMap(p -> p.piece().shapes().stream()).filter(s -> !s.on().isWall());
        return Stream.concat(Stream.of(new Shape(Surface.WALL, Overlay.union(onWall))), others).toList();
    }

    List<Cut> cuts() {
        return parts.stream().flatMap(p -> p.piece().cuts().stream()).toList();
    }

    /** What of a region lies between two places along the wall. */
    static List<Region> within(Region r, Box between) {
        Box b = r.box();
        if (b.maxX() <= between.minX() || b.minX() >= between.maxX()) {
            return List.of();
        }
        if (b.minX() >= between.minX() && b.maxX() <= between.maxX()) {
            return List.of(r);
        }
        Box part = new Box(Math.max(b.minX(), between.minX()), b.minY(), Math.min(b.maxX(), between.maxX()), b.maxY());
        return r.isBox() ? List.of(Region.of(part)) : Overlay.intersection(List.of(r), List.of(Region.of(part)));
    }
}
