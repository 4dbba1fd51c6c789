package rainlap.rule.face;

import java.util.Optional;
import java.util.OptionalDouble;
import rainlap.geom.Box;
import rainlap.geom.Grid;
import rainlap.joint.Joint;
import rainlap.material.Sizes;
import rainlap.stack.Face;

/** Which way a sheet's ribs or boards run. */
enum SheetRun {
    UPRIGHT, ACROSS;

    /** As near as a cut is made: 1 mm. */
    private static final double NEAR = Grid.of(1);

    /** Of the sheets of a joint: by the one that has its full width, else by the longer side of the outer one; empty for a square one. */
    static Optional<SheetRun> of(Joint j) {
        return byWidth(j.outer()).or(() -> byWidth(j.inner())).or(() -> byLongerSide(j.outer())).or(() -> byLongerSide(j.inner()));
    }

    private static Optional<SheetRun> byWidth(Face sheet) {
        OptionalDouble full = fullWidth(sheet.piece().material().sizes());
        if (full.isEmpty()) {
            return Optional.empty();
        }
        double width = full.getAsDouble() * Grid.MM;
        boolean stands = Math.abs(sheet.box().width() - width) <= NEAR, lies = Math.abs(sheet.box().height() - width) <= NEAR;
        return stands == lies ? Optional.empty() : Optional.of(stands ? UPRIGHT : ACROSS);
    }

    /** What a sheet adds to the wall and its lap; else its width. */
    private static OptionalDouble fullWidth(Sizes s) {
        return s.coverWidthMm().isPresent() && s.sideLapMm().isPresent()
                ? OptionalDouble.of(s.coverWidthMm().getAsDouble() + s.sideLapMm().getAsDouble()) : s.widthMm();
    }

    private static Optional<SheetRun> byLongerSide(Face sheet) {
        Box b = sheet.box();
        return b.width() == b.height() ? Optional.empty() : Optional.of(b.height() > b.width() ? UPRIGHT : ACROSS);
    }
}
