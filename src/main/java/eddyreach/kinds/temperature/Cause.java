package eddyreach.kinds.temperature;

/** What of switch and target follows the temperature, in the order in which the parts are added up. */
public enum Cause {
    WINDING("winding"),
    HOUSING("housing"),
    FERRITE("ferrite"),
    CAPACITOR("capacitor"),
    TARGET("target"),
    COMPENSATION("compensation");

    private final String label;

    Cause(String label) {
        this.label = label;
    }

    /** Its word in files, tables and charts. */
    public String label() {
        return label;
    }
}
