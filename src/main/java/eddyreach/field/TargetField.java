package eddyreach.field;

/** The target's side of the gap. */
public interface TargetField {

    /** The reflection at an angular frequency, rad/s. */
    Reflection at(double omega);
}
