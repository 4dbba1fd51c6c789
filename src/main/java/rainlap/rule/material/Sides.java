package rainlap.rule.material;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rainlap.material.Durability;
import rainlap.material.Metal;
import rainlap.material.NamedPair;
import rainlap.material.Substance;
import rainlap.wall.Piece;

/** What a piece shows to what it lies on, and to what lies on it. */
final class Sides {
    private Sides() {}

    /** One stuff of a piece. Of a metal that is not known the word is the file's own. */
    record Stuff(Piece of, String word, String inWords, boolean isMetal) {
        Optional<Metal> metal() {
            return isMetal ? Metal.find(word) : Optional.empty();
        }

        String named() {
            return of.id() + " (" + inWords + ")";
        }
    }

    /** Two stuffs that may mind one another: two metals not the same, or two that a text names. */
    record Meeting(Stuff a, Stuff b) {
        boolean isOfMetals() {
            return a.isMetal && b.isMetal;
        }

        boolean isOfConcern() {
            return isOfMetals() ? !a.word.equals(b.word) : NamedPair.find(a.word, b.word).isPresent();
        }
    }

    static List<Stuff> beneath(Piece p) {
        return Contacts.isStuck(p) ? substance(p) : all(p);
    }

    static List<Stuff> outside(Piece p) {
        return Contacts.isStuck(p) && p.material().durability().metal().isPresent() ? metal(p) : all(p);
    }

    static List<Stuff> all(Piece p) {
        List<Stuff> out = new ArrayList<>(metal(p));
        out.addAll(substance(p));
        return out;
    }

    private static List<Stuff> metal(Piece p) {
        return p.material().durability().metal().map(m -> Metal.find(m).map(Metal::word).orElse(m)).map(m -> new Stuff(p, m, m, true)).stream().toList();
    }

    private static List<Stuff> substance(Piece p) {
        Durability d = p.material().durability();
        return d.substance().map((Substance s) -> new Stuff(p, s.word(), s.inWords(), false)).stream().toList();
    }

    /** Those of concern, every stuff of the one with every stuff of the other. */
    static List<Meeting> meetings(List<Stuff> one, List<Stuff> other) {
        return one.stream().flatMap(a -> other.stream().map(b -> new Meeting(a, b))).filter(Meeting::isOfConcern).toList();
    }
}
