package eddyreach.switching;

/** Whether the output conducts with or without a target. */
public enum OutputFunction {
    NORMALLY_OPEN,
    NORMALLY_CLOSED;

    /**
     * Whether the output conducts.
     *
     * @param damped true while the switch has recognised a target: the oscillation is damped
     */
    public boolean conducts(boolean damped) {
        return damped == (this == NORMALLY_OPEN);
    }
}
