package rainlap.geom;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Finds the boxes that meet a box: a packed Hilbert tree (JTS HPRtree) over numbered boxes, or the boxes one by one where they are few. */
public final class BoxTree {
    private static final int FEW = 16;

    private final List<Box> few;
    /** Null where they are few. */
    private final HPRtree tree;

    /** The item of {@code boxes.get(i)} is i. */
    public BoxTree(List<Box> boxes) {
        few = boxes.size() <= FEW ? List.copyOf(boxes) : List.of();
        tree = boxes.size() <= FEW ? null : tree(boxes);
    }

    private static HPRtree tree(List<Box> boxes) {
        HPRtree tree = new HPRtree();
        for (int i = 0; i < boxes.size(); i++) {
            tree.insert(envelope(boxes.get(i)), i);
        }
        tree.build();
        return tree;
    }

    /** Hands over the number of every box that shares at least a point with {@code box}, in no particular order. */
    public void query(Box box, IntConsumer each) {
        for (int i = 0; i < few.size(); i++) {
            if (few.get(i).meets(box)) {
                each.accept(i);
            }
        }
        if (tree != null) {
            tree.query(envelope(box), item -> each.accept((Integer) item));
        }
    }

    /** The numbers of all boxes that share at least a point with {@code box}, ascending. */
    public int[] meeting(Box box) {
        Found found = new Found();
        query(box, found);
        int[] out = Arrays.copyOf(found.numbers, found.count);
        Arrays.sort(out);
        return out;
    }

    private static final class Found implements IntConsumer {
        private int[] numbers = new int[16];
        private int count;

        @Override
        public void accept(int number) {
            if (count == numbers.length) {
                numbers = Arrays.copyOf(numbers, 2 * count);
            }
            numbers[count++] = number;
        }
    }

    private static Envelope envelope(Box b) {
        return new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY());
    }
}
