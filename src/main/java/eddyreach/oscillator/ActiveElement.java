package eddyreach.oscillator;

import java.util.List;

/**
 * The oscillator's active element, described by the negative conductance it offers to a sinusoidal voltage
 * (describing function).
 */
public interface ActiveElement {

    /** The word of the file format under which a switch model asks for it, the same in results. */
    String name();

    /**
     * A parameter of an element.
     *
     * @param name its key in the file format
     * @param value its value, SI
     * @param unit symbol of its SI unit
     */
    record Parameter(String name, double value, String unit) {}

    /** Its parameters in a fixed order. */
    List<Parameter> parameters();

    /**
     * Magnitude of the effective negative conductance, S, at a voltage amplitude.
     *
     * @param amplitude peak voltage over the tank, V, positive
     */
    double conductance(double amplitude);

    /** Negative conductance at vanishing amplitude, S; infinite for a hard limiter. */
    double smallSignalConductance();

    /**
     * Steady amplitude, V, with a tank of conductance G: the root of conductance(A) = G, 0 when the element
     * cannot sustain the oscillation.
     *
     * @param tankConductance total loss conductance of the tank, S, positive
     */
    double amplitude(double tankConductance);
}
