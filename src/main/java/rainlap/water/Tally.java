package rainlap.water;

/** Counts where the rain goes. */
final class Tally {
    double fallen;
    double onOpenings;
    double frame;
    double trapped;
    private double foot;
    private double drips;
    private double openings;
    private double sides;

    void leave(Exit.Out out, double litres) {
        switch (out) {
            case FOOT -> foot += litres;
            case OPENING -> openings += litres;
            case SIDE -> sides += litres;
            case CLEAR -> drips += litres;
        }
    }

    Balance balance() {
        return new Balance(fallen, foot, drips, openings, sides, onOpenings, frame, trapped);
    }
}
