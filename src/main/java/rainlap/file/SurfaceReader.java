package rainlap.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.wall.Opening;
import rainlap.wall.Side;
import rainlap.wall.Surface;

/** Reads {@code on}, and refuses shapes that leave their surface. */
final class SurfaceReader {
    private static final List<Side> SIDES = List.of(Side.SILL, Side.LEFT, Side.RIGHT, Side.HEAD);
    private final Ids<Opening> openings;

    SurfaceReader(Ids<Opening> openings) {
        this.openings = openings;
    }

    /** The surface an object names, the wall where it names none; empty and noted where there is no such surface. */
    Optional<Surface> read(Fields f) {
        Optional<Value> v = f.find("on");
        if (v.isEmpty()) {
            return Optional.of(Surface.WALL);
        }
        return f.text(v.get(), "on", f.limits().idLength() + 10).flatMap(t -> named(f, t));
    }

    private Optional<Surface> named(Fields f, Value.Text t) {
        String name = t.text();
        if (name.equals(Side.WALL.word())) {
            return Optional.of(Surface.WALL);
        }
        int dot = name.lastIndexOf('.');
        String opening = dot < 0 ? name : name.substring(0, dot);
        Optional<Side> side = SIDES.stream().filter(s -> s.word().equals(name.substring(dot + 1))).findFirst();
        if (openings.isKnown(opening) && side.isPresent()) {
            return Optional.of(new Surface(opening, side.get()));
        }
        f.wrong(t.at(), "there is no surface " + Quoted.text(name), () -> Nearest.hint(name, all(),
                openings.all().isEmpty() ? "the file has no openings; leave \"on\" out for the wall"
                        : "an opening has " + String.join(", ", surfacesOf(openings.all().iterator().next()))));
        return Optional.empty();
    }

    private List<String> all() {
        List<String> out = new ArrayList<>(List.of("wall"));
        openings.all().forEach(o -> out.addAll(surfacesOf(o)));
        return out;
    }

    private static List<String> surfacesOf(String opening) {
        return Stream.of("sill", "left", "right", "head").map(s -> opening + "." + s).toList();
    }

    /** Notes a shape on a reveal that leaves the reveal. */
    void refuseLeaving(Fields f, Surface on, ShapeReader.Drawn drawn) {
        Optional<Opening> opening = on.isWall() ? Optional.empty() : openings.find(on.opening());
        if (opening.isEmpty()) {
            return;
        }
        Box frame = opening.get().surface(on.side());
        if (!drawn.regions().stream().map(Region::box).allMatch(frame::contains)) {
            f.wrong(drawn.at(), "the shape leaves " + on.name() + ", which is " + OpeningReader.mm(frame.width()) + " long and "
                    + OpeningReader.mm(frame.height()) + " deep",
                    "here x is u, along the edge, and y is v, inwards; parts on other surfaces go under \"shapes\"");
        }
    }
}
