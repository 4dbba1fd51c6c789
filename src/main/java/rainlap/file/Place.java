package rainlap.file;

/** A place in a file: line and column, both from 1; the column counts characters, a tab being one. */
public record Place(int line, int column) implements Comparable<Place> {
    @Override
    public int compareTo(Place o) {
        return line != o.line ? Integer.compare(line, o.line) : Integer.compare(column, o.column);
    }
}
