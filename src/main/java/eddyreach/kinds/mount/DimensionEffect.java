package eddyreach.kinds.mount;

/**
 * How the switch-on distance follows a dimension of a mount.
 *
 * @param dimension the dimension
 * @param step number of the step of a stepped recess, from 1; 0 where there is one opening only
 * @param value the dimension, m
 * @param slope change of the switch-on distance by that of the dimension, m/m
 * @param spread half the difference between the slopes to both sides, m/m: what is not linear, and the mesh; NaN where only one side exists
 */
public record DimensionEffect(Varied dimension, int step, double value, double slope, double spread) {

    /** The dimensions of a mount that are varied. */
    public enum Varied {
        SUNK("sunk by", true),
        PROUD("proud by", true),
        RECESS_DIAMETER("recess diameter", false),
        RECESS_DEPTH("recess depth", true),
        COUNTERSINK_DIAMETER("countersink diameter", false),
        COUNTERSINK_DEPTH("countersink depth", true),
        BORE("bore", false),
        EDGE("edge distance", false),
        WALL_THICKNESS("wall thickness", false),
        COVER_DISTANCE("cover distance", false),
        COVER_THICKNESS("cover thickness", false),
        BACKGROUND_DISTANCE("background distance", false);

        private final String label;
        private final boolean shimmed;

        Varied(String label, boolean shimmed) {
            this.label = label;
            this.shimmed = shimmed;
        }
    }

    /** The words shown to the user. */
    public String label() {
        return step == 0 ? dimension.label : dimension.label + ", step " + step;
    }

    /** True for a dimension along the axis that a shim under the wall changes. */
    public boolean shimmed() {
        return dimension.shimmed;
    }
}
