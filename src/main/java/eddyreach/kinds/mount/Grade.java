package eddyreach.kinds.mount;

/** Whether a mount will do, the best first. */
public enum Grade {
    OK("OK"),
    CARE("OK with care"),
    NOT_OK("not OK");

    private final String label;

    Grade(String label) {
        this.label = label;
    }

    /** The words shown to the user. */
    public String label() {
        return label;
    }

    /** The worse of two. */
    Grade worse(Grade other) {
        return compareTo(other) < 0 ? other : this;
    }
}
