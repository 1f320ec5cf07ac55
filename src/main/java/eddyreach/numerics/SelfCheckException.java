package eddyreach.numerics;

/**
 * A computation failed a check of its own: the field is not resolved, or the program is wrong. It ends the run, since no result of it can be
 * trusted; it never becomes a note.
 */
public class SelfCheckException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    public SelfCheckException(String message) {
        super(message);
    }
}
