package eddyreach.linalg;

import eddyreach.numerics.SelfCheckException;

/** A factorisation met a vanishing or non-finite pivot. */
public final class SingularMatrixException extends SelfCheckException {

    public SingularMatrixException(String message) {
        super(message);
    }
}
