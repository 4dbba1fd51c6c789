package rainlap.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rainlap.geom.Box;
import rainlap.geom.Overlay;
import rainlap.geom.Region;
import rainlap.material.MaterialKind;
import rainlap.paper.Area;
import rainlap.paper.Group;
import rainlap.paper.Mark;
import rainlap.paper.PaperBox;
import rainlap.paper.PaperPoint;
import rainlap.paper.PaperRegion;
import rainlap.paper.Text;
import rainlap.paper.TextMetrics;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;
import rainlap.rule.Evidence;
import rainlap.rule.Place;
import rainlap.stack.Face;
import rainlap.wall.Opening;
import rainlap.wall.Penetration;
import rainlap.wall.Surface;

/** Names of openings, penetrations and pieces on the drawing; those that find no room are listed. */
final class Names {
    /** Longer names are cut short on the drawing; the table and the findings file have them whole. */
    private static final double LONGEST = 30;
    /** Where along a strip its name is tried. */
    private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.42, 0.58, 0.27, 0.73, 0.1, 0.9};
    private final Evidence evidence;
    private final Visibility visibility;
    private final View view;
    private final Room room;
    private final List<Mark> out = new ArrayList<>();
    private final List<String> unnamed = new ArrayList<>();
    private final Set<String> sought = new TreeSet<>();
    private final Box window;
    private final Map<String, List<Mark>> byId = new LinkedHashMap<>();

    /** @param window the part of the wall shown */
    Names(Evidence evidence, Visibility visibility, View view, Room room, Box window) {
        this.window = window;
        this.evidence = evidence;
        this.visibility = visibility;
        this.view = view;
        this.room = room;
    }

    Group marks() {
        evidence.elevation().openings().stream().filter(o -> window.overlaps(o.rect())).forEach(o -> under(o.id(), () -> opening(o)));
        return Group.of("names", rest());
    }

    /** Of penetrations and pieces alone. */
    List<Mark> rest() {
        evidence.elevation().penetrations().stream().filter(p -> window.contains(p.region().box())).forEach(p -> under(p.id(), () -> penetration(p)));
        Map<String, List<Face>> byPiece = new LinkedHashMap<>();
        visibility.on(Surface.WALL).stream().filter(f -> window.overlaps(f.box())).forEach(f -> byPiece.computeIfAbsent(f.piece().id(), id -> new ArrayList<>()).add(f));
        List<String> order = byPiece.keySet().stream()
                .sorted(Comparator.comparingInt((String id) -> isSheet(byPiece.get(id).get(0)) ? 0 : 1)).toList();
        order.forEach(id -> under(id, () -> piece(id, byPiece.get(id))));
        return out;
    }

    private void under(String id, Runnable naming) {
        int from = out.size();
        naming.run();
        byId.put(id, List.copyOf(out.subList(from, out.size())));
    }

    /** The marks of each name by id; known once {@link #marks} has been asked. */
    Map<String, List<Mark>> byId() {
        return byId;
    }

    /** Ids that found no room, in laying order. */
    List<String> unnamed() {
        return unnamed;
    }

    /** Ids that stand on the drawing. */
    Set<String> named() {
        Set<String> out = new TreeSet<>(sought);
        unnamed.forEach(out::remove);
        return out;
    }

    private static boolean isSheet(Face f) {
        return Visibility.isMembrane(f) || f.kind() == MaterialKind.CLADDING;
    }

    private static String cut(String name, TextStyle style) {
        return TextMetrics.shorten(name, LONGEST, style);
    }

    private void opening(Opening o) {
        sought.add(o.id());
        PaperBox b = view.box(o.rect()).grown(-view.length(o.reveal()) - 0.5);
        String size = Place.mm(o.rect().width()) + " × " + Place.mm(o.rect().height());
        List<Text> lines = new ArrayList<>();
        PaperPoint m = b.middle();
        String id = TextMetrics.shorten(o.id(), Math.max(8, b.width() - 2), Looks.NAME);
        String named = o.kind() == Opening.Kind.OTHER ? id : id + " " + o.kind().word();
        boolean wide = TextMetrics.width(named, Looks.NAME) <= b.width();
        lines.add(Text.of(m.x(), m.y() - 1.2, wide ? named : id, Looks.NAME));
        String reveal = size + ", reveal " + Place.mm(o.reveal());
        if (TextMetrics.width(reveal, Looks.PLAIN) <= b.width()) {
            lines.add(Text.of(m.x(), m.y() + 4.1, reveal, Looks.PLAIN.middle()));
        } else {
            lines.add(Text.of(m.x(), m.y() + 4.1, size, Looks.PLAIN.middle()));
            lines.add(Text.of(m.x(), m.y() + 8.3, "reveal " + Place.mm(o.reveal()), Looks.PLAIN.middle()));
        }
        if (o.reveal() > 0 && evidence.stack().surfaces().stream().anyMatch(s -> s.opening().equals(o.id()))) {
            lines.add(Text.of(m.x(), lines.get(lines.size() - 1).at().y() + 4.2, "returns laid flat", Looks.SECOND.middle()));
        }
        List<Text> fit = lines.stream().filter(t -> b.holds(t.box()) && room.isFreeOver(t.box())).toList();
        if (fit.contains(lines.get(0))) {
            fit.forEach(t -> room.take(t.box()));
            fit.forEach(t -> out.addAll(Symbols.haloed(t, Tone.WHITE)));
        } else {
            named(o.id(), o.id(), view.box(o.rect()), List.of(), Looks.MEMBRANE);
        }
    }

    private void penetration(Penetration p) {
        sought.add(p.id());
        PaperBox b = view.box(p.region().box());
        Box box = p.region().box();
        boolean round = box.width() == box.height()
                && Math.abs(p.region().areaMm2() / (Math.PI / 4 * box.width() * box.height() / 1e4) - 1) < 0.02;
        String size = (round ? "Ø" : Place.mm(box.height()) + " × ") + Place.mm(box.width());
        named(p.id(), cut(p.id(), Looks.STRONG) + " " + cut(p.kind(), Looks.STRONG) + " " + size, b, List.of(), Looks.MEMBRANE);
    }

    private void piece(String id, List<Face> faces) {
        sought.add(id);
        MaterialKind kind = faces.get(0).kind();
        List<PaperRegion> shown = faces.stream().flatMap(f -> free(f).stream()).map(view::region).toList();
        if (shown.isEmpty()) {
            unnamed.add(id);
        } else if (isSheet(faces.get(0))) {
            Tone ground = kind == MaterialKind.MEMBRANE ? Looks.MEMBRANE : Tone.WHITE;
            Optional<Text> large = room.inside(shown, cut(id, Looks.NAME), Looks.NAME);
            large.ifPresent(t -> out.addAll(Symbols.haloed(t, ground)));
            if (large.isEmpty()) {
                named(id, id, PaperBox.around(WeakPlaces.inside(widest(shown)), 1, 1), shown, ground);
            }
        } else if (kind == MaterialKind.CORNER_PIECE || kind == MaterialKind.COLLAR) {
            named(id, id, largest(shown), List.of(), Looks.MEMBRANE);
        } else {
            tag(id, largest(shown));
        }
    }

    /** What of a face shows, on the wall's own plane where there is enough of it. */
    private List<Region> free(Face f) {
        List<Region> bare = new ArrayList<>(visibility.bare(f));
        List<Region> holes = new ArrayList<>();
        evidence.elevation().penetrations().forEach(p -> holes.add(p.region()));
        List<Region> open = Overlay.difference(bare, holes);
        if (!window.contains(f.box())) {
            open = Overlay.intersection(open, List.of(Region.of(window)));
        }
        List<Region> inside = Overlay.intersection(open, List.of(evidence.elevation().outline().region()));
        return inside.isEmpty() ? open : inside;
    }

    private static PaperBox largest(List<PaperRegion> regions) {
        return widest(regions).box();
    }

    private static PaperRegion widest(List<PaperRegion> regions) {
        return regions.stream().max(Comparator.comparingDouble(r -> r.box().width() * r.box().height())).orElseThrow();
    }

    /** @param label the id or what begins with it */
    private void named(String id, String label, PaperBox target, List<PaperRegion> regions, Tone ground) {
        TextStyle style = Looks.STRONG.middle();
        String name = TextMetrics.shorten(label, 2 * LONGEST, style);
        Optional<Text> in = regions.isEmpty() ? Optional.empty() : room.inside(regions, name, style);
        if (in.isPresent()) {
            out.addAll(Symbols.haloed(in.get(), ground));
            return;
        }
        Optional<List<Mark>> near = room.beside(target, name, style, ground);
        near.ifPresent(out::addAll);
        if (near.isEmpty()) {
            unnamed.add(id);
        }
    }

    /** A name in a white box on the strip itself, else beside it. */
    private void tag(String id, PaperBox strip) {
        TextStyle style = Looks.STRONG.middle();
        String name = cut(id, style);
        double w = TextMetrics.width(name, style) + 1.6, h = 3.7;
        boolean upright = strip.height() > strip.width();
        Optional<PaperBox> on = room.firstOver(on(strip, upright, w, h));
        if (on.isPresent()) {
            out.add(Area.of(PaperRegion.of(on.get()), Tone.WHITE, Looks.THIN));
            out.add(Text.centred(on.get().middle(), name, style));
            return;
        }
        Optional<List<Mark>> near = room.beside(strip, name, style, Looks.MEMBRANE).or(() -> along(strip, upright).stream()
                .flatMap(edge -> room.beside(edge, name, style, Looks.MEMBRANE).stream()).findFirst());
        near.ifPresent(out::addAll);
        if (near.isEmpty()) {
            unnamed.add(id);
        }
    }

    /** Boxes of so much by so much along a strip that do not run out of it. */
    private static List<PaperBox> on(PaperBox strip, boolean upright, double w, double h) {
        List<PaperBox> out = new ArrayList<>();
        for (double share : SHARES) {
            for (double off : new double[] {0, -0.8, 0.8, -1.6, 1.6}) {
                PaperPoint at = upright ? new PaperPoint(strip.middle().x() + off, strip.top() + share * strip.height())
                        : new PaperPoint(strip.left() + share * strip.width(), strip.middle().y() + off);
                out.add(PaperBox.around(at, w, h));
            }
        }
        return out.stream().filter(box -> upright ? box.height() < strip.height() && w < strip.width() + 4 : box.width() < strip.width()).toList();
    }

    /** Places on a strip close to its long edges, for where a weak stretch runs along its middle. */
    private static List<PaperBox> along(PaperBox strip, boolean upright) {
        List<PaperBox> out = new ArrayList<>();
        for (double share : SHARES) {
            for (double inside : new double[] {0.3, (upright ? strip.width() : strip.height()) - 0.3}) {
                PaperPoint at = upright ? new PaperPoint(strip.left() + inside, strip.top() + share * strip.height())
                        : new PaperPoint(strip.left() + share * strip.width(), strip.top() + inside);
                out.add(PaperBox.around(at, 0.2, 0.2));
            }
        }
        return out;
    }
}
