package rainlap.joint;

/** The class of a joint; the words are those of the findings file. */
public enum JointKind {
    COURSE_LAP("course-lap", "course lap"), END_LAP("end-lap", "end lap"), REVERSE_LAP("reverse-lap", "reverse lap"),
    BUTT("butt", "butt"), GAP("gap", "gap");

    private final String word;
    private final String inWords;

    JointKind(String word, String inWords) {
        this.word = word;
        this.inWords = inWords;
    }

    public String word() {
        return word;
    }

    public String inWords() {
        return inWords;
    }

    public boolean isLap() {
        return this == COURSE_LAP || this == END_LAP || this == REVERSE_LAP;
    }
}
