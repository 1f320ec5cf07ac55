package eddyreach.switching;

/** Whether the output conducts with or without a target. */
public enum OutputFunction {
    NORMALLY_OPEN("normally open"),
    NORMALLY_CLOSED("normally closed");

    private final String label;

    OutputFunction(String label) {
        this.label = label;
    }

    /** The words used in files and tables. */
    public String label() {
        return label;
    }

    /**
     * Whether the output conducts.
     *
     * @param damped true while the switch has recognised a target: the oscillation is damped
     */
    public boolean conducts(boolean damped) {
        return damped == (this == NORMALLY_OPEN);
    }
}
