package eddyreach.oscillator;

/** Coil and tank agree on no frequency: with this much loss, or so little inductance, nothing oscillates. A property of the switch. */
public final class NoOscillationException extends ArithmeticException {

    private static final long serialVersionUID = 1L;

    public NoOscillationException(String message) {
        super(message);
    }
}
