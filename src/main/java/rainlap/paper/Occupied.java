package rainlap.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Register of the boxes already taken on a sheet. What is placed first stays; what comes later gives way. Boxes keep a
 * clearance from each other. Looking up is by cells, so a sheet with thousands of texts stays quick.
 */
public final class Occupied {

    /** Clearance between boxes in millimetres. */
    public static final double CLEARANCE = 0.5;

    private static final double CELL = 10;

    private final TreeMap<Long, List<PaperBox>> boxes = new TreeMap<>();
    private final TreeMap<Long, List<PaperSegment>> segments = new TreeMap<>();

    /** What the texts among some marks take, in groups too. */
    public static Occupied byTexts(List<Mark> marks) {
        Occupied out = new Occupied();
        marks.forEach(out::addTexts);
        return out;
    }

    private void addTexts(Mark m) {
        if (m instanceof Group g) {
            g.marks().forEach(this::addTexts);
        } else if (m instanceof Text t) {
            add(t.box());
        }
    }

    /** Takes a box. */
    public void add(PaperBox box) {
        for (long cell : cells(box)) {
            boxes.computeIfAbsent(cell, c -> new ArrayList<>()).add(box);
        }
    }

    /** Takes the path of a line. */
    public void add(Polyline line) {
        for (PaperSegment segment : line.segments()) {
            for (long cell : cells(PaperBox.of(List.of(segment.from(), segment.to())))) {
                segments.computeIfAbsent(cell, c -> new ArrayList<>()).add(segment);
            }
        }
    }

    /** True when the box keeps its clearance from everything taken so far. */
    public boolean isFree(PaperBox box) {
        PaperBox wide = box.grown(CLEARANCE);
        for (long cell : cells(wide)) {
            for (PaperBox taken : boxes.getOrDefault(cell, List.of())) {
                if (wide.meets(taken)) {
                    return false;
                }
            }
            for (PaperSegment taken : segments.getOrDefault(cell, List.of())) {
                if (wide.meets(taken)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** True when the segment keeps its clearance from all boxes taken so far and meets no line. */
    public boolean isFree(PaperSegment segment) {
        for (long cell : cells(PaperBox.of(List.of(segment.from(), segment.to())).grown(CLEARANCE))) {
            if (boxes.getOrDefault(cell, List.of()).stream().anyMatch(b -> b.grown(CLEARANCE).meets(segment))
                    || segments.getOrDefault(cell, List.of()).stream().anyMatch(segment::meets)) {
                return false;
            }
        }
        return true;
    }

    /** Takes the first of the candidates that is free; empty when none is. */
    public Optional<PaperBox> place(List<PaperBox> candidates) {
        Optional<PaperBox> free = candidates.stream().filter(this::isFree).findFirst();
        free.ifPresent(this::add);
        return free;
    }

    /** Takes the first text that is free and inside {@code room}; empty when none is. */
    public Optional<Text> placeText(List<Text> candidates, PaperBox room) {
        Optional<Text> free =
                candidates.stream().filter(t -> room.holds(t.box()) && isFree(t.box())).findFirst();
        free.ifPresent(t -> add(t.box()));
        return free;
    }

    private static List<Long> cells(PaperBox box) {
        List<Long> cells = new ArrayList<>();
        for (long x = cell(box.left()); x <= cell(box.right()); x++) {
            for (long y = cell(box.top()); y <= cell(box.bottom()); y++) {
                cells.add(x * 1_000_003L + y);
            }
        }
        return cells;
    }

    private static long cell(double at) {
        return (long) Math.floor(at / CELL);
    }
}
