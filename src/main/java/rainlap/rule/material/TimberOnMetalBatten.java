package rainlap.rule.material;

import java.util.List;
import java.util.stream.Stream;
import rainlap.geom.Box;
import rainlap.geom.Region;
import rainlap.material.Durability;
import rainlap.material.MaterialKind;
import rainlap.material.Substance;
import rainlap.measure.LengthText;
import rainlap.rule.Evidence;
import rainlap.rule.Finding;
import rainlap.rule.Outcome;
import rainlap.rule.Place;
import rainlap.rule.Rule;
import rainlap.rule.RuleInfo;
import rainlap.wall.Piece;

/** A wooden batten lies against a metal one where it gets wet: water stays between them, the wood rots and the metal corrodes. */
public final class TimberOnMetalBatten implements Rule {
    static final RuleInfo INFO = RuleInfo.of("timber-on-metal-batten", "wooden on metal batten", RuleInfo.Theme.MATERIALS);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Stream<Outcome> check(Evidence e) {
        List<Contacts.Contact> all = Contacts.of(e, (a, b) -> isBatten(a) && isBatten(b) && (isMetal(a) && !isMetal(b) || isMetal(b) && !isMetal(a)));
        if (all.isEmpty()) {
            return Stream.of(new Outcome.DoesNotApply("no batten lies on a metal one at this stage"));
        }
        return all.stream().map(c -> judge(e, c));
    }

    private static boolean isBatten(Piece p) {
        return p.material().kind() == MaterialKind.BATTEN;
    }

    private static boolean isMetal(Piece p) {
        return p.material().durability().metal().isPresent();
    }

    private static Outcome judge(Evidence e, Contacts.Contact c) {
        Piece other = isMetal(c.outer()) ? c.inner() : c.outer();
        Durability d = other.material().durability();
        List<String> ids = List.of(c.outer().id(), c.inner().id());
        if (d.substance().isEmpty()) {
            return new Outcome.CannotTell(ids, other.material().id() + " does not say whether it is timber (substance)");
        }
        return d.substance().filter(Substance::isTimber).isPresent() ? Wet.of(e.elevation().exposure()).judge(ids, () -> broken(e, c)) : Outcome.Holds.of(ids);
    }

    private static Outcome broken(Evidence e, Contacts.Contact c) {
        Place where = Place.area(e.elevation(), c.on(), c.where());
        Box b = c.where().stream().map(Region::box).reduce(Box::join).orElseThrow();
        return Finding.of(INFO, where, List.of(c.outer().id(), c.inner().id())).reads("wood on metal, wet", "kept apart, or one kind")
                .says(c.outer().id() + " (" + c.outer().material().name() + ") lies on " + c.inner().id() + " (" + c.inner().material().name() + ") at "
                        + where.inWords() + " where rain is stated: water stays between them, so that the wood rots and the metal corrodes. "
                        + "Common practice keeps wooden and metal battens apart where it is wet.",
                        "Make both layers of metal, or put a strip that takes up no water between them, " + LengthText.mmUp(b.width()) + " x "
                        + LengthText.mmUp(b.height()) + " and 10 more on every side. Cut metal edges are sharp: wear gloves.");
    }
}
