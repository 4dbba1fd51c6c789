package rainlap.drawing;

import rainlap.paper.Edge;
import rainlap.paper.Pen;
import rainlap.paper.TextStyle;
import rainlap.paper.Tone;

/** Tones, lines and letters of the sheet, in one place. */
final class Looks {
    static final Tone MEMBRANE = Tone.of("#eaf2f7");
    static final Tone FOLDED = Tone.of("#f5f9fb");
    static final Tone LAP = Tone.of("#c3d9e6");
    static final Tone TAPE = Tone.of("#f9e3ba");
    static final Tone CORNER = Tone.of("#f6d9a6");
    static final Tone FLASHING = Tone.of("#cfd2d6");
    static final Tone BATTEN = Tone.of("#efe6d2");
    static final Tone SECTION_SHEET = Tone.of("#2b4a60");
    static final Tone HAIR = Tone.of("#888888");

    static final Edge OUTLINE = Edge.of(Pen.EXTRA_WIDE);
    static final Edge WIDE = Edge.of(Pen.WIDE);
    static final Edge MEDIUM = Edge.of(Pen.MEDIUM);
    static final Edge NARROW = Edge.of(Pen.NARROW);
    static final Edge THIN = Edge.of(Pen.THIN);
    static final Edge HIDDEN = Edge.of(Pen.NARROW_DASHED, Tone.of("#222222"));
    static final Edge CENTRE = Edge.of(Pen.THIN_DASH_DOT);
    static final Edge FLAT = Edge.of(Pen.THIN_DASH_TWO_DOTS, Tone.of("#333333"));
    static final Edge MATCH = Edge.of(Pen.WIDE_DASH_TWO_DOTS);
    static final Edge DIAGONAL = Edge.of(Pen.THIN, Tone.of("#777777"));
    static final Edge RULE = Edge.of(Pen.THIN, HAIR);
    static final Edge STRIP_EDGE = Edge.of(Pen.NARROW, Tone.of("#3b2a00"));
    static final Edge STRIP_HATCH = Edge.of(Pen.THIN, Tone.of("#8a5a00"));
    static final Edge REVERSED_HATCH = Edge.of(Pen.THIN, Tone.of("#5b7c90"));
    static final Edge FRAME_HATCH = Edge.of(Pen.THIN, Tone.of("#444444"));

    /** Pitch of hatches, printed mm. */
    static final double TAPE_PITCH = 1.15;
    static final double CORNER_PITCH = 1.6;
    static final double REVERSED_PITCH = 1.3;

    /** Plain text: capitals 2.5 high, lines 3.9 apart. */
    static final TextStyle PLAIN = TextStyle.of(2.5);
    static final TextStyle SECOND = PLAIN.grey();
    static final TextStyle STRONG = PLAIN.medium();
    static final TextStyle MARK = TextStyle.of(2.9).bold().middle();
    static final TextStyle TITLE = TextStyle.of(3.5).bold();
    static final TextStyle NAME = TextStyle.of(3.5).bold().middle();
    static final TextStyle LARGE = TextStyle.of(5).bold();
    static final double LINE = 3.9;

    private Looks() {}
}
