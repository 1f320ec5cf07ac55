package eddyreach.geometry;

/** What a part is there for: losses are summed and shown by role. */
public enum Role {
    WINDING("winding"),
    CORE("core"),
    HOUSING("housing"),
    MOUNT("mount"),
    TARGET("target");

    private final String label;

    Role(String label) {
        this.label = label;
    }

    /** The word shown to the user. */
    public String label() {
        return label;
    }
}
