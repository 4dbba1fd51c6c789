package rainlap.building;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rainlap.building.SmallBuilding.sheet;
import static rainlap.building.SmallBuilding.tape;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rainlap.file.BuildingFile;
import rainlap.geom.Box;
import rainlap.wall.Elevation;
import rainlap.wall.OutlineEdge;
import rainlap.wall.Piece;

class UnfoldedTest {
    private static List<String> ids(Elevation e) {
        return e.pieces().stream().map(Piece::id).toList();
    }

    private static Piece piece(Elevation e, String id) {
        return e.pieces().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private static Box mm(int from, int to, int foot, int head) {
        return Box.ofMm(from, foot, to - from, head - foot);
    }

    @Test void aSheetDrawnFromBothSidesIsOnePiece() {
        Building b = new SmallBuilding().wall("a", sheet("M1", -50, 3300, 0, 1000)).wall("b", sheet("M7", -200, 2900, 0, 1000)).open();
        Unfolded a = Unfolded.of(b, 0);
        assertEquals(List.of(List.of("M1", "b M7")), a.together());
        assertEquals(List.of("M1"), ids(a.flat()));
        assertEquals(List.of(mm(-50, 5900, 0, 1000)), piece(a.flat(), "M1").shapes().get(0).regions().stream().map(r -> r.box()).toList());
        assertEquals(b.walls().get(0).elevation().pieces(), a.asBuilt().pieces(), "on its own wall it stays as that wall draws it");
        Unfolded other = Unfolded.of(b, 1);
        assertEquals(List.of(List.of("M7", "a M1")), other.together());
        assertEquals(List.of(mm(-3050, 2900, 0, 1000)), piece(other.flat(), "M7").shapes().get(0).regions().stream().map(r -> r.box()).toList());
    }

    /** Within 1 mm is the same end; beyond it, or of another material, it is another piece. */
    @Test void whatEndsElsewhereIsAnotherPiece() {
        for (int head : new int[] {1001, 1002}) {
            Building b = new SmallBuilding().wall("a", sheet("M1", 0, 3300, 0, 1000)).wall("b", sheet("M1", -300, 3000, 0, head)).open();
            assertEquals(head == 1001 ? List.of("M1") : List.of("M1", "b M1"), ids(Unfolded.of(b, 0).flat()), "head " + head);
        }
        Building b = new SmallBuilding().wall("a", sheet("M1", 0, 3300, 0, 1000)).wall("b", sheet("M1", -300, 3000, 0, 1000).replace("foil", "breather")).open();
        assertEquals(List.of("M1", "b M1"), ids(Unfolded.of(b, 0).flat()));
    }

    @Test void whatComesRoundLiesOnTheNeighbour() {
        Building b = new SmallBuilding().wall("a", sheet("M1", 0, 3250, 0, 1000)).wall("b", sheet("M2", 0, 3000, 0, 2400)).open();
        Unfolded right = Unfolded.of(b, 1);
        assertEquals(List.of("a M1", "M2"), ids(right.asBuilt()));
        assertEquals(List.of("a M1"), right.round());
        assertEquals(mm(-300, 250, 0, 1000), piece(right.asBuilt(), "a M1").wallBox().orElseThrow(), "and 300 beside it");
        assertEquals(List.of(), Unfolded.of(b, 0).round(), "M2 ends at the fold");
        assertEquals(List.of("M1", "b M2"), ids(Unfolded.of(b, 0).asBuilt()), "so that it is seen to end there");
    }

    @Test void whatIsDrawnWhollyBeyondIsLeftOut() {
        Building b = new SmallBuilding().wall("a", sheet("M1", 0, 3000, 0, 1000), sheet("S", 3000, 3300, 0, 1000)).wall("b", sheet("M2", 0, 3000, 0, 2400)).open();
        assertEquals(List.of("S"), Unfolded.of(b, 0).leftOut());
        assertEquals(List.of("M1", "b M2"), ids(Unfolded.of(b, 0).flat()));
        assertEquals(List.of(), Unfolded.of(b, 1).leftOut());
    }

    @Test void coursesGoOnFromTheBaseUp() {
        Building b = new SmallBuilding().wall("a", sheet("M1", 0, 3300, 0, 1300), sheet("M2", 0, 3300, 1100, 2400), tape("T", 3000, 0, 2400))
                .wall("b", sheet("M1", -300, 3000, 0, 800), sheet("M2", -300, 3000, 600, 1600), sheet("M3", -300, 3000, 1400, 2400)).open();
        assertEquals(List.of("b M1", "M1", "b M2", "M2", "b M3", "T"), ids(Unfolded.of(b, 0).flat()));
    }

    /** A sheet that was hung first stays beneath all that its wall lays later, and so does what the neighbour lays before that. */
    @Test void aWallsOwnOrderHolds() {
        Building b = new SmallBuilding().wall("a", sheet("M2", 0, 3300, 1100, 2400), sheet("M1", 0, 3300, 0, 1300))
                .wall("b", sheet("M1", -300, 3000, 0, 1400), sheet("M2", -300, 3000, 1200, 2400)).open();
        assertEquals(List.of("M2", "M1", "b M1", "b M2"), ids(Unfolded.of(b, 0).flat()));
    }

    /** Two pieces that both walls draw, in opposite orders: one of them cannot be common. */
    @Test void oppositeOrdersTakeOnePieceApart() {
        Building b = new SmallBuilding().wall("a", tape("T", 3000, 0, 2400), sheet("M", 0, 3300, 0, 2400))
                .wall("b", sheet("M", -300, 3000, 0, 2400), tape("T", 0, 0, 2400)).open();
        Unfolded a = Unfolded.of(b, 0);
        assertEquals(1, a.together().size());
        assertEquals(3, a.flat().pieces().size());
        assertEquals(List.of("T", "M"), ids(a.flat()).stream().filter(id -> !id.startsWith("b ")).toList());
    }

    @Test void aWallThatStandsHigherKeepsItsCornerAbove() {
        Building b = new SmallBuilding().wallOf("a", 2000).wallOf("b", 3000).open();
        Elevation flat = Unfolded.of(b, 1).flat();
        assertEquals(3000 * 2000 + 3000 * 3000, flat.outline().region().areaMm2());
        List<OutlineEdge> corners = flat.outline().edges().stream().filter(e -> e.role().isCorner()).toList();
        assertEquals(List.of(mm(-3000, -3000, 0, 2000), mm(3000, 3000, 0, 3000), mm(0, 0, 2000, 3000)),
                corners.stream().map(e -> e.line().box()).toList());
        assertEquals(List.of(mm(0, 0, 0, 2000)), Unfolded.of(b, 1).corners().stream().map(e -> e.line().box()).toList());
    }

    @Test void aRingHasNoEnd() {
        Building b = new SmallBuilding().wall("a").wall("b").wall("c").closed();
        for (int i = 0; i < 3; i++) {
            assertEquals(2, Unfolded.of(b, i).corners().size());
            assertEquals(mm(-3000, 6000, 0, 2400), Unfolded.of(b, i).flat().outline().box());
        }
    }

    /** Who lies over whom at a corner does not depend on the wall that looks. */
    @ParameterizedTest
    @ValueSource(strings = {"estuary-hut", "bakery-trailer"})
    void bothWallsOfACornerSeeOneOrder(String name) {
        Building b = BuildingFile.read(Path.of("elevations/buildings/" + name + ".json")).building().orElseThrow();
        int compared = 0;
        for (int i = 0; i < b.walls().size(); i++) {
            OptionalInt next = b.rightOf(i);
            if (next.isPresent()) {
                Building.Wall here = b.walls().get(i), there = b.walls().get(next.getAsInt());
                List<String> seen = common(Unfolded.of(b, i), here, there), other = common(Unfolded.of(b, next.getAsInt()), there, here);
                assertEquals(seen, other);
                compared += seen.size();
            }
        }
        assertTrue(compared > 100, compared + " pieces");
    }

    /** The pieces of two walls in order, each by its wall's name, a common one by those of both. */
    private static List<String> common(Unfolded u, Building.Wall own, Building.Wall other) {
        List<String> out = new ArrayList<>();
        for (Piece p : u.flat().pieces()) {
            List<String> names = new ArrayList<>();
            u.together().stream().filter(t -> t.get(0).equals(p.id())).flatMap(t -> t.stream().skip(1)).filter(id -> id.startsWith(other.name("")))
                    .forEach(names::add);
            if (p.id().startsWith(other.name(""))) {
                names.add(p.id());
            } else if (own.elevation().pieces().stream().anyMatch(q -> q.id().equals(p.id()))) {
                names.add(own.name(p.id()));
            }
            if (!names.isEmpty()) {
                out.add(String.join(" = ", names.stream().sorted().toList()));
            }
        }
        return out;
    }
}
