import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.geom.Point;
import rainlap.geom.Region;
import rainlap.material.Catalogue;
import rainlap.material.Material;
import rainlap.material.MaterialKind;
import rainlap.wall.Cut;
import rainlap.wall.CutPattern;
import rainlap.wall.EdgeRole;
import rainlap.wall.Elevation;
import rainlap.wall.Exposure;
import rainlap.wall.Opening;
import rainlap.wall.Outline;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;
import rainlap.wall.Shape;
import rainlap.wall.Surface;

/** A made-up facade of bays 3 m by 3 m with a window in each, about 27 pieces a bay, laid so badly that there is a weak point for every piece. Invented. */
final class CarelessFacade {
    private static final Material SHEET = Material.of("sheet", MaterialKind.MEMBRANE), TAPE = Material.of("tape", MaterialKind.TAPE),
            METAL = Material.of("metal", MaterialKind.FLASHING), CORNER = Material.of("corner", MaterialKind.CORNER_PIECE),
            BATTEN = Material.of("batten", MaterialKind.BATTEN), BOARD = Material.of("board", MaterialKind.CLADDING);
    private final Random random = new Random(1);
    private final boolean isLong;
    private final List<Piece> pieces = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();

    private CarelessFacade(String kind) {
        this.isLong = kind.equals("long");
    }

    /** @param kind nothing, shuffled (file order at random) or long (sheets and tapes of courses run the whole width) */
    static Elevation of(int pieces, String kind) {
        CarelessFacade f = new CarelessFacade(kind);
        int bays = Math.max(1, pieces / 30), across = (int) Math.ceil(Math.sqrt(bays * 3.0));
        for (int i = 0; i < bays; i++) {
            if (f.isLong && i % across == 0) {
                f.courses(i, Math.min(across, bays - i), i / across * 3000.0);
            }
            f.bay(i % across * 3000.0, i / across * 3000.0, "b" + i);
        }
        if (kind.equals("shuffled")) {
            Collections.shuffle(f.pieces, f.random);
        }
        Region wall = Region.of(Box.ofMm(0, 0, across * 3000.0, (bays + across - 1) / across * 3000.0));
        List<OutlineEdge> edges = wall.edges().stream().map(s -> new OutlineEdge(s, EdgeRole.FREE, Optional.empty())).toList();
        return new Elevation("facade", Optional.empty(), Exposure.UNSTATED, new Outline(wall, edges, OptionalLong.empty()), f.openings,
                List.of(), Catalogue.builtIn(), f.pieces, List.of());
    }

    private void bay(double x, double y, String id) {
        String w = id + "w";
        openings.add(new Opening(w, Opening.Kind.WINDOW, Box.ofMm(x + 900, y + 900, 1200, 1200), Grid.of(90), Optional.empty(),
                OptionalLong.empty(), OptionalLong.empty()));
        for (int c = 0; c < 3; c++) {
            if (isLong) {
                add(id + "p" + c, TAPE, box(x + 300, y + c * 1000 + 200, 150, 75));
            } else {
                add(id + "m" + c, SHEET, box(x - 75, y + c * 1000 - 50, 3150, 1100), new Cut(w, CutPattern.DIAGONAL, Grid.of(90)));
                add(id + "t" + c, TAPE, box(x - 75, y + c * 1000 - 88, 3150, 75));
            }
        }
        add(id + "e", TAPE, box(x - 113, y, 75, 3000));
        add(id + "sill", TAPE, box(x + 800, y + 850, 1400, 100));
        add(id + "left", TAPE, box(x + 850, y + 850, 100, 1300));
        add(id + "right", TAPE, box(x + 2050, y + 850, 100, 1300));
        add(id + "head", METAL, box(x + 780, y + 2080, 1440, 75));
        add(id + "headtape", TAPE, box(x + 780, y + 2120, 1440, 75));
        for (int k = 0; k < 4; k++) {
            corner(id + "k" + k, x + (k % 2 == 0 ? 900 : 2100), y + (k < 2 ? 900 : 2100));
        }
        for (int k = 0; k < 5; k++) {
            add(id + "v" + k, BATTEN, box(x + k * 600 + 30, y, 45, 3000));
        }
        for (int k = 0; k < 6; k++) {
            add(id + "c" + k, BOARD, box(x, y + k * 500 - 20, 3000, 540));
        }
    }

    /** Of one storey, the whole width; the windows are those of the bays from the first on. */
    private void courses(int first, int bays, double y) {
        Cut[] cuts = IntStream.range(first, first + bays).mapToObj(i -> new Cut("b" + i + "w", CutPattern.DIAGONAL, Grid.of(90))).toArray(Cut[]::new);
        for (int c = 0; c < 3; c++) {
            add("r" + first + "m" + c, SHEET, box(-75, y + c * 1000 - 50, bays * 3000 + 150, 1100), cuts);
            add("r" + first + "t" + c, TAPE, box(-75, y + c * 1000 - 88, bays * 3000 + 150, 75));
        }
    }

    private void corner(String id, double x, double y) {
        add(id, CORNER, new Shape(Surface.WALL, List.of(Region.of(List.of(at(x - 90, y), at(x, y - 90), at(x + 90, y), at(x, y + 90))))));
    }

    private Point at(double x, double y) {
        return Point.ofMm(x, y);
    }

    private Shape box(double x, double y, double w, double h) {
        Point a = at(x, y), b = at(x + w, y + h);
        return new Shape(Surface.WALL, List.of(Region.of(new Box(a.x(), a.y(), b.x(), b.y()))));
    }

    private void add(String id, Material m, Shape shape, Cut... cuts) {
        pieces.add(new Piece(id, m, List.of(shape), List.of(), m.bond(), List.of(cuts)));
    }
}
