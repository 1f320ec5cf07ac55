package eddyreach.model.values;

/** How a switch may be embedded in metal: the trade's two kinds. */
public enum Mounting {
    FLUSH,
    NON_FLUSH
}
