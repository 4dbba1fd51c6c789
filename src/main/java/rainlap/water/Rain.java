package rainlap.water;

import java.util.Optional;
import java.util.function.Predicate;

/** Where water comes to the wall from outside. */
interface Rain {
    /** On every surface. */
    Rain EVERYWHERE = c -> c.isOpen() ? Optional.of(c.rain()) : Optional.empty();

    /** What comes to a cell, on its outermost layer. */
    Optional<Wet> on(Cell c);

    /** A cell that none comes to, as if it bordered on no others than those where water comes in; empty if it borders on none, or its water keeps out. */
    default Optional<Cell> beside(Cell c) {
        return Optional.empty();
    }

    /** On some cells only, and from those beside them to them alone. */
    static Rain into(Predicate<Cell> some) {
        return new Rain() {
            @Override
            public Optional<Wet> on(Cell c) {
                return c.isOpen() && some.test(c) ? Optional.of(c.rain()) : Optional.empty();
            }

            @Override
            public Optional<Cell> beside(Cell c) {
                return c.isOpen() ? c.towards(some) : Optional.empty();
            }
        };
    }
}
