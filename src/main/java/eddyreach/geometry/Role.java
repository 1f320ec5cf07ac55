package eddyreach.geometry;

/** What a part is there for: losses are summed and shown by role. */
public enum Role {
    WINDING,
    CORE,
    HOUSING,
    MOUNT,
    TARGET
}
