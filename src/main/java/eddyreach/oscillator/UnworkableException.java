package eddyreach.oscillator;

import java.util.Locale;

/**
 * A stated value with which the switch cannot work, and the values with which it would: for what an engineer may ask and physics refuses, unlike the
 * arguments that no caller may pass ({@link IllegalArgumentException}).
 */
public final class UnworkableException extends ArithmeticException {

    private static final long serialVersionUID = 1;

    private final String quantity;
    private final double value;
    private final String unit;
    private final double low;
    private final double high;

    /**
     * @param reason what fails, a main clause without a full stop; empty when the range says it all
     * @param quantity what the value is
     * @param value the value that does not work
     * @param unit its unit; empty for a pure number
     * @param low lower end of the values that work; the smallest normal number says positive
     * @param high upper end of the values that work, infinite or the largest number when there is none; below the lower end when no value works
     */
    public UnworkableException(String reason, String quantity, double value, String unit, double low, double high) {
        super((reason.isEmpty() ? "" : reason + "; ") + quantity + " " + text(value, unit) + ": "
                + range(low, high, unit));
        this.quantity = quantity;
        this.value = value;
        this.unit = unit;
        this.low = low;
        this.high = high;
    }

    /**
     * Passes a value through that lies in a range, its ends included.
     *
     * @throws UnworkableException when it does not, or is no number
     */
    public static double require(String quantity, double value, String unit, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new UnworkableException("", quantity, value, unit, low, high);
        }
        return value;
    }

    /** What the value is. */
    public String quantity() {
        return quantity;
    }

    /** The value that does not work. */
    public double value() {
        return value;
    }

    /** Unit of the value and of the range; empty for a pure number. */
    public String unit() {
        return unit;
    }

    /** Lower end of the values that work. */
    public double low() {
        return low;
    }

    /** Upper end of the values that work. */
    public double high() {
        return high;
    }

    /** Whether any value works while everything else stays. */
    public boolean anyWorks() {
        return low <= high;
    }

    private static String range(double low, double high, String unit) {
        if (!(low <= high)) {
            return "no value works";
        }
        String most = high >= Double.MAX_VALUE ? "" : "at most " + text(high, unit);
        String least =
                low == Double.MIN_NORMAL ? "positive" : low <= -Double.MAX_VALUE ? "" : "at least " + text(low, unit);
        return "must be " + least + (least.isEmpty() || most.isEmpty() ? "" : " and ") + most;
    }

    private static String text(double value, String unit) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e6;
        String number = String.format(Locale.ROOT, whole ? "%.0f" : "%.4g", value);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
