package rainlap.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rainlap.geom.Box;
import rainlap.geom.BoxTree;
import rainlap.material.Catalogue;

/** One elevation, read and checked: ids are unique, references resolve, shapes are sound. Pieces stand in laying order. */
public final class Elevation {
    private final String name;
    private final Optional<String> practice;
    private final Exposure exposure;
    private final Outline outline;
    private final List<Opening> openings;
    private final Map<String, Opening> openingById = new HashMap<>();
    private final BoxTree openingTree;
    private final List<Penetration> penetrations;
    private final BoxTree penetrationTree;
    private final Catalogue materials;
    private final List<Piece> pieces;
    private final List<Expectation> expected;

    /** @param practice the practice's id as the file names it, if it does */
    public Elevation(String name, Optional<String> practice, Exposure exposure, Outline outline, List<Opening> openings,
            List<Penetration> penetrations, Catalogue materials, List<Piece> pieces, List<Expectation> expected) {
        this.name = name;
        this.practice = practice;
        this.exposure = exposure;
        this.outline = outline;
        this.openings = List.copyOf(openings);
        this.openings.forEach(o -> openingById.put(o.id(), o));
        this.openingTree = new BoxTree(this.openings.stream().map(Opening::rect).toList());
        this.penetrations = List.copyOf(penetrations);
        this.penetrationTree = new BoxTree(this.penetrations.stream().map(p -> p.region().box()).toList());
        this.materials = materials;
        this.pieces = List.copyOf(pieces);
        this.expected = List.copyOf(expected);
    }

    public String name() {
        return name;
    }

    public Optional<String> practice() {
        return practice;
    }

    public Exposure exposure() {
        return exposure;
    }

    public Outline outline() {
        return outline;
    }

    public List<Opening> openings() {
        return openings;
    }

    public Optional<Opening> findOpening(String id) {
        return Optional.ofNullable(openingById.get(id));
    }

    /** Those whose rectangles share at least a point with a box, in the order of the file. */
    public List<Opening> openingsMeeting(Box box) {
        return meeting(openings, openingTree, box);
    }

    public List<Penetration> penetrations() {
        return penetrations;
    }

    /** Those whose boxes share at least a point with a box, in the order of the file. */
    public List<Penetration> penetrationsMeeting(Box box) {
        return meeting(penetrations, penetrationTree, box);
    }

    private static <T> List<T> meeting(List<T> all, BoxTree tree, Box box) {
        int[] found = tree.meeting(box);
        List<T> out = new ArrayList<>(found.length);
        for (int i : found) {
            out.add(all.get(i));
        }
        return out;
    }

    public Catalogue materials() {
        return materials;
    }

    public List<Piece> pieces() {
        return pieces;
    }

    public List<Expectation> expected() {
        return expected;
    }

    /** The same wall with other pieces. */
    public Elevation withPieces(List<Piece> other) {
        return new Elevation(name, practice, exposure, outline, openings, penetrations, materials, other, expected);
    }

    /** The same wall with no pieces but those that meet a box, or lie in the reveal of an opening that does; none is cut. */
    public Elevation near(Box box) {
        return withPieces(referring(pieces.stream().filter(p -> p.shapes().stream().anyMatch(s -> s.on().isWall() ? s.box().meets(box)
                : findOpening(s.on().opening()).map(Opening::rect).filter(r -> r.meets(box)).isPresent())).toList()));
    }

    /** Pieces that name none but one another. */
    private static List<Piece> referring(List<Piece> kept) {
        Set<String> ids = kept.stream().map(Piece::id).collect(Collectors.toSet());
        return kept.stream().map(p -> new Piece(p.id(), p.material(), p.shapes(), p.under().stream().filter(ids::contains).toList(), p.bond(), p.cuts())).toList();
    }
}
