package eddyreach.study;

/** The questions a study can ask. */
public enum StudyKind {
    /** Targets approached over a range of distances. */
    APPROACH("approach"),
    /** Correction factors of materials against the standard target. */
    MATERIALS("materials");

    private final String label;

    StudyKind(String label) {
        this.label = label;
    }

    /** The word used in files. */
    public String label() {
        return label;
    }
}
