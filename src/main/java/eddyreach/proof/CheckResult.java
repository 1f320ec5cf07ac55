package eddyreach.proof;

import org.apache.commons.math3.complex.Complex;

/**
 * What became of one check.
 *
 * @param check the check
 * @param computed the computed value
 */
public record CheckResult(Check check, Complex computed) {

    /** True when the computed value is near enough; false for NaN. */
    public boolean passed() {
        return check.expected().accepts(computed);
    }

    /** Computed less expected, or its magnitude for complex values; the way to the nearer end outside a range. */
    public double deviation() {
        return check.expected().deviation(computed);
    }
}
