package eddyreach.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import org.apache.commons.math3.complex.Complex;

/** Collects the checks of one group, source by source. */
final class CheckList {

    private final String group;
    private final List<Check> checks = new ArrayList<>();
    private Source source;

    CheckList(String group) {
        this.group = group;
    }

    /** The source of the checks that follow. */
    CheckList from(Provenance provenance, String name) {
        source = new Source(name, provenance);
        return this;
    }

    /** Expects a real number to half a unit of its last digit. */
    CheckList value(String quantity, String text, DoubleSupplier computation) {
        return add(quantity, Expected.Value.printed(text), "", computation);
    }

    /** Expects a real number with another allowance, for a reason. */
    CheckList value(String quantity, String text, double allowed, String reason, DoubleSupplier computation) {
        return add(quantity, new Expected.Value(text, allowed), reason, computation);
    }

    /** Expects a real number with an allowance that is a fraction of it, for a reason. */
    CheckList within(double fraction, String quantity, String text, String reason, DoubleSupplier computation) {
        return add(quantity, Expected.Value.relative(text, fraction), reason, computation);
    }

    /** Expects a complex number with an allowance that is a fraction of its magnitude, for a reason. */
    CheckList within(
            double fraction, String quantity, String re, String im, String reason, Supplier<Complex> computation) {
        checks.add(new Check(group, quantity, source, Expected.Pair.relative(re, im, fraction), reason, computation));
        return this;
    }

    /** Expects a number in a range, whose ends have a reason. */
    CheckList range(String quantity, double low, double high, String reason, DoubleSupplier computation) {
        return add(quantity, new Expected.Range(low, high), reason, computation);
    }

    /** Expects a number up to a limit, for a reason. */
    CheckList atMost(double limit, String quantity, String reason, DoubleSupplier computation) {
        return range(quantity, Double.NEGATIVE_INFINITY, limit, reason, computation);
    }

    /** Expects a number from a limit on, for a reason. */
    CheckList atLeast(double limit, String quantity, String reason, DoubleSupplier computation) {
        return range(quantity, limit, Double.POSITIVE_INFINITY, reason, computation);
    }

    private CheckList add(String quantity, Expected expected, String reason, DoubleSupplier computation) {
        checks.add(new Check(group, quantity, source, expected, reason, () -> new Complex(computation.getAsDouble())));
        return this;
    }

    List<Check> list() {
        return List.copyOf(checks);
    }
}
