package eddyreach.proof;

import java.util.function.Supplier;
import org.apache.commons.math3.complex.Complex;

/**
 * One expected value and how the program computes it.
 *
 * @param group heading it stands under
 * @param quantity what it is, with its unit
 * @param source where the expected value comes from
 * @param expected the expected value and how far the computed one may be away
 * @param reason why the allowance is what it is; empty where it is half a unit of the last printed digit
 * @param computation computes the value, in the same unit; real values have no imaginary part
 */
public record Check(
        String group, String quantity, Source source, Expected expected, String reason, Supplier<Complex> computation) {

    /** Computes the value. */
    public CheckResult run() {
        return new CheckResult(this, computation.get());
    }

    @Override
    public String toString() {
        return group + ": " + quantity;
    }
}
