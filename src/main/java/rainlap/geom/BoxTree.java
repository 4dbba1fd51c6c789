package rainlap.geom;

import java.util.List;
import java.util.function.IntConsumer;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** Finds the boxes that meet a box: a packed Hilbert tree (JTS HPRtree) over numbered boxes. Not thread-safe until first queried. */
public final class BoxTree {
    private final HPRtree tree = new HPRtree();

    /** The item of {@code boxes.get(i)} is i. */
    public BoxTree(List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            tree.insert(envelope(boxes.get(i)), i);
        }
        tree.build();
    }

    /** Hands over the number of every box that shares at least a point with {@code box}, in no particular order. */
    public void query(Box box, IntConsumer each) {
        tree.query(envelope(box), item -> each.accept((Integer) item));
    }

    private static Envelope envelope(Box b) {
        return new Envelope(b.minX(), b.maxX(), b.minY(), b.maxY());
    }
}
