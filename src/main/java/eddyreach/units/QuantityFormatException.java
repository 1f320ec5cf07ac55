package eddyreach.units;

/** A text is not the quantity it should be; the message is a sentence for the user, without the place. */
public class QuantityFormatException extends IllegalArgumentException {

    /** With a sentence that says what was found and what is needed. */
    public QuantityFormatException(String message) {
        super(message);
    }
}
