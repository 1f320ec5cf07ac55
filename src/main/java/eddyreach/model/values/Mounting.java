package eddyreach.model.values;

/** How a switch may be embedded in metal: the trade's two kinds. */
public enum Mounting {
    FLUSH("flush"),
    NON_FLUSH("non-flush");

    private final String label;

    Mounting(String label) {
        this.label = label;
    }

    /** The word used in files and tables. */
    public String label() {
        return label;
    }
}
