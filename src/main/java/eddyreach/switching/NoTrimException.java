package eddyreach.switching;

/** No thresholds make the switch go on and off where it should with its standard target. A property of the switch. */
public final class NoTrimException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    public NoTrimException(String message) {
        super(message);
    }
}
