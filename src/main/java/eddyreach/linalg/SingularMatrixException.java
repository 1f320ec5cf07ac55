package eddyreach.linalg;

/** A factorisation met a vanishing or non-finite pivot. */
public final class SingularMatrixException extends ArithmeticException {

    public SingularMatrixException(String message) {
        super(message);
    }
}
