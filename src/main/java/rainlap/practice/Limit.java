package rainlap.practice;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of limit a practice may set. Ids are permanent. */
public enum Limit {
    COURSE_LAP("course-lap", "course lap", "The upper sheet runs down over the lower one by at least this much."),
    END_LAP("end-lap", "end lap", "Sheets of one course run past one another by at least this much."),
    TAPE_FREE_LAP("tape-free-lap", "lap that needs no tape",
            "A joint lapped by at least this much needs no tape; never means every joint is taped."),
    TAPE_COVER("tape-cover", "tape each side of a joint", "A tape covers its joint by at least this much to each side."),
    LAP_STAGGER("lap-stagger", "stagger of end laps", "End laps of successive courses stand at least this far apart."),
    END_LAP_TO_OPENING("end-lap-to-opening", "end lap to opening",
            "An end lap keeps at least this far from the corner of an opening."),
    RETURN_HEAD("return-head", "return at the head", "The membrane turns into the opening at the head by at least this much."),
    RETURN_JAMB("return-jamb", "return at the jambs", "The membrane turns into the opening at each jamb by at least this much."),
    RETURN_SILL("return-sill", "return at the sill", "The membrane turns into the opening at the sill by at least this much."),
    HEAD_UPSTAND("head-upstand", "head flashing upstand",
            "The upstand of a head flashing runs up behind the membrane by at least this much."),
    FLASHING_PAST_OPENING("flashing-past-opening", "flashing past opening",
            "A flashing runs past each side of the opening by at least this much."),
    FLASHING_FALL("flashing-fall", "fall of a flashing", "deg", "A flashing falls outwards by at least this much, in degrees from level."),
    END_DAM("end-dam", "end dam", "Each end of a flashing at an opening is turned up by at least this much."),
    FLASHING_LAP("flashing-lap", "lap of flashings", "Where one flashing goes on as the next, unsealed, they lap by at least this much."),
    FLASHING_LAP_SEALED("flashing-lap-sealed", "sealed lap of flashings",
            "Where one flashing goes on as the next, with sealant or tape, they lap by at least this much."),
    SILL_TURN_UP("sill-turn-up", "sill turned up the jamb", "What lines a sill turns up both jambs in one piece by at least this much."),
    BACK_DAM("back-dam", "back of a sill pan", "The back edge of a sill pan, at the frame, is turned up by at least this much."),
    DRIP("drip", "drip of a flashing", "The drip of a flashing stands off the face below by at least this much."),
    TURN_DOWN("turn-down", "front of a flashing turned down", "The front of a flashing comes down over what lies below by at least this much."),
    SILL_FALL("sill-fall", "fall of a flashing at a sill", "deg", "A flashing at the sill of an opening falls outwards by at least this much, in degrees from level."),
    SILL_DRIP("sill-drip", "drip of a flashing at a sill", "The drip of a flashing at the sill of an opening stands off the face below by at least this much."),
    CORNER_WRAP("corner-wrap", "wrap round a corner",
            "The membrane runs on past a corner of the building by at least this much."),
    BASE_COVER("base-cover", "cover past the base", "The membrane, or a flashing beneath it, comes down past the base of the wall by at least this much."),
    TOP_TURN("top-turn", "turn over the top", "The membrane turns over the top of the wall by at least this much, or is sealed there."),
    CAPPING_COVER("capping-cover", "capping down over a parapet", "The capping of a parapet comes down over the wall's face by at least this much."),
    CAPPING_FALL("capping-fall", "fall of a capping", "deg", "The top of a parapet's capping falls to one side by at least this much, in degrees from level."),
    CAPPING_LAP("capping-lap", "lap of cappings", "Where one capping goes on as the next, they lap by at least this much, with sealant between."),
    GROUND_CLEARANCE("ground-clearance", "cladding above the ground", "The lower edge of the cladding stays above the ground by at least this much."),
    SANDY_CLEARANCE("sandy-clearance", "cladding above sandy ground", "Where the ground is sandy, or little rain falls, the lower edge of the cladding stays above it by at least this much."),
    PAVED_CLEARANCE("paved-clearance", "cladding above sloping paving",
            "Over impermeable paving that slopes away the lower edge of the cladding stays above it by at least this much."),
    DECK_CLEARANCE("deck-clearance", "cladding above a deck", "The lower edge of the cladding stays above a deck that meets the wall by at least this much."),
    ROOF_CLEARANCE("roof-clearance", "cladding above a roof", "The lower edge of the cladding stays above a roof that meets the wall by at least this much."),
    CLADDING_BELOW_FRAME("cladding-below-frame", "cladding below the frame",
            "The cladding comes down below the lowest framing by at least this much."),
    EAVE_SHELTER("eave-shelter", "eave that replaces a head flashing", "x",
            "The head flashing may be left out where the eave overhangs by this many times its height above the head."),
    CAVITY_DEPTH("cavity-depth", "depth of the cavity", "The drainage gap between the wrap and the cladding is at least this deep."),
    CAVITY_OPEN("cavity-open", "open share of the cavity", "x",
            "Battens leave at least this share of the cavity open, seen from outside."),
    CAVITY_OUTLET("cavity-outlet", "outlet of the cavity", "mm2/m",
            "At the foot of the cladding the cavity is open by at least this many square millimetres in each metre."),
    BATTEN_FALL("batten-fall", "fall of a batten across the cavity", "deg",
            "A batten that lies across the cavity falls to its ends by at least this much, in degrees from level; never means that none may lie there."),
    BATTEN_GAP("batten-gap", "gap beside a batten across the cavity",
            "Each end of a batten that lies across the cavity keeps at least this far from the next batten."),
    CLEAR_OF_FLASHING("clear-of-flashing", "cladding clear of flashing",
            "Above the sloping part of a head flashing the cladding ends at least this far up."),
    BOARD_LAP("board-lap", "lap of boards", "A board that lies across laps the one below by at least this much."),
    FIBRE_CEMENT_LAP("fibre-cement-lap", "lap of fibre-cement boards", "A fibre-cement board that lies across laps the one below by at least this much."),
    HARDBOARD_LAP("hardboard-lap", "lap of hardboard", "A board of hardboard that lies across laps the one below by at least this much."),
    SHEET_END_LAP("sheet-end-lap", "end lap of sheets", "A cladding sheet laps the one that goes on from its end by at least this much."),
    DRIVING_SHARE("driving-share", "share of the driving pressure behind a drained cladding", "x",
            "Water behind a drained cladding is driven by this share of the pressure that wind and travel make in the open.");

    private final String id;
    private final String plainName;
    private final String unit;
    private final String meaning;

    Limit(String id, String plainName, String meaning) {
        this(id, plainName, "mm", meaning);
    }

    Limit(String id, String plainName, String unit, String meaning) {
        this.id = id;
        this.plainName = plainName;
        this.unit = unit;
        this.meaning = meaning;
    }

    /** The name in data files and findings: lower case with hyphens. */
    public String id() {
        return id;
    }

    /** The name in a sentence: "course lap". */
    public String plainName() {
        return plainName;
    }

    /** {@code mm}, {@code deg} for an angle, {@code x} for a factor, or {@code mm2/m}: square millimetres in each metre. */
    public String unit() {
        return unit;
    }

    /** One sentence on what is asked. */
    public String meaning() {
        return meaning;
    }

    /** Whether the limit is a length in mm, not an angle or a factor. */
    public boolean isLength() {
        return unit.equals("mm");
    }

    /** The limit with this id. */
    public static Optional<Limit> find(String id) {
        return Arrays.stream(values()).filter(l -> l.id.equals(id)).findFirst();
    }
}
