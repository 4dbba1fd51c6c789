package rainlap.material;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How a piece holds to what lies beneath it.
 *
 * @param isFull adhered over its whole face; then every edge is sealed
 * @param sealedEdges the edges that no water gets behind, in the order of {@link Edge}; empty for a loose piece
 */
public record Bond(boolean isFull, Set<Edge> sealedEdges) {
    /** Fixed but not sealed anywhere. */
    public static final Bond LOOSE = new Bond(false, Set.of());
    /** Adhered over the whole face. */
    public static final Bond FULL = new Bond(true, EnumSet.allOf(Edge.class));

    /** @throws IllegalArgumentException if a piece adhered over its whole face is said to have an open edge */
    public Bond {
        EnumSet<Edge> inOrder = EnumSet.noneOf(Edge.class);
        inOrder.addAll(sealedEdges);
        if (isFull && inOrder.size() < Edge.values().length) {
            throw new IllegalArgumentException("a piece adhered over its whole face has no open edge");
        }
        sealedEdges = Collections.unmodifiableSet(inOrder);
    }

    /** Sealed along these edges only; all four do not make it {@link #FULL}. None makes it {@link #LOOSE}. */
    public static Bond sealedAt(Collection<Edge> edges) {
        return new Bond(false, Set.copyOf(edges));
    }

    /** Sealed along these edges only. */
    public static Bond sealedAt(Edge... edges) {
        return sealedAt(List.of(edges));
    }

    /** Whether no edge is sealed. */
    public boolean isLoose() {
        return sealedEdges.isEmpty();
    }

    /** Whether no water gets behind this edge. */
    public boolean seals(Edge edge) {
        return sealedEdges.contains(edge);
    }

    /** As text: {@code full}, {@code loose}, or {@code sealed top, left}. */
    public String text() {
        if (isFull) {
            return "full";
        }
        return isLoose() ? "loose" : sealedEdges.stream().map(Edge::word).collect(Collectors.joining(", ", "sealed ", ""));
    }
}
