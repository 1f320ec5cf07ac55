package eddyreach.proof;

import java.util.List;
import org.apache.commons.math3.complex.Complex;

/** Invented check values with signs that pages must escape. */
public final class SampleProof {

    private static final Source BOOK =
            new Source("A. Author, <b>A & B</b> | \"Book\" (1900), page 1", Provenance.PRINTED);
    private static final Source LAW = new Source("energy", Provenance.LAW);

    private SampleProof() {}

    private static CheckResult result(
            String group, String quantity, Source source, Expected expected, String reason, Complex computed) {
        return new CheckResult(new Check(group, quantity, source, expected, reason, () -> computed), computed);
    }

    /** Two values that are met and one that is not. */
    public static ProofResult mixed() {
        return new ProofResult(List.of(
                result(
                        "Coils",
                        "a quantity with a long name and a unit, µH",
                        BOOK,
                        new Expected.Value("1.25", 0.005),
                        "",
                        new Complex(1.2534)),
                result(
                        "Coils",
                        "dZ <ohm>",
                        BOOK,
                        new Expected.Pair("3.00", "-4.00", 0.05),
                        "1 % | more",
                        new Complex(3.1, -4)),
                result("Laws", "imbalance", LAW, new Expected.Range(0, 1e-6), "rounding", new Complex(2e-13))));
    }

    /** One value that is met. */
    public static ProofResult good() {
        return new ProofResult(mixed().results().subList(0, 1));
    }
}
