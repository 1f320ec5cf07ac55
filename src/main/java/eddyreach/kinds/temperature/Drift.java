package eddyreach.kinds.temperature;

/**
 * What the study states of drifts that the materials do not tell, each a change per kelvin relative to the value at 23 degrees Celsius.
 *
 * @param permeability of the core's permeability, 1/K
 * @param coreLoss of the loss part of that permeability, 1/K
 * @param capacitor of the tank's capacitance, 1/K
 * @param compensation of both thresholds, told as conductances, 1/K: what the electronics do against all else
 */
record Drift(double permeability, double coreLoss, double capacitor, double compensation) {

    /** Whether something is stated for a cause; of winding, housing and target the materials tell. */
    boolean moves(Cause cause) {
        return switch (cause) {
            case FERRITE -> permeability != 0 || coreLoss != 0;
            case CAPACITOR -> capacitor != 0;
            case COMPENSATION -> compensation != 0;
            case WINDING, HOUSING, TARGET -> true;
        };
    }
}
