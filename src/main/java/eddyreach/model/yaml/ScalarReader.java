package eddyreach.model.yaml;

import eddyreach.units.Dimension;
import eddyreach.units.QuantityFormatException;
import eddyreach.units.Texts;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/** Turns what is written at one place into a number, a whole number, a word's meaning or a line, and records there what is wrong with it. */
final class ScalarReader {

    private static final int LONGEST_LINE = 120;
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,9}");

    private ScalarReader() {}

    /** A quantity in SI units; NaN after a problem. */
    static double number(Node at, Dimension dimension, ToDoubleFunction<String> parser, double min, double max) {
        Optional<String> text = at.scalar(Expectation.of(dimension));
        if (text.isEmpty()) {
            return Double.NaN;
        }
        try {
            double si = parser.applyAsDouble(text.get());
            if (si >= min && si <= max) {
                return si;
            }
            at.problem(Texts.excerpt(text.get()) + " is out of range, needs "
                    + Expectation.range(text.get(), dimension, min, max));
        } catch (QuantityFormatException e) {
            at.problem(e.getMessage());
        }
        return Double.NaN;
    }

    /** A whole number; min after a problem. */
    static int integer(Node at, int min, int max) {
        Optional<String> text = at.scalar(Expectation.whole(min, max));
        if (text.isEmpty()) {
            return min;
        }
        if (WHOLE.matcher(text.get()).matches()) {
            int number = Integer.parseInt(text.get());
            if (number >= min && number <= max) {
                return number;
            }
        }
        at.problem("got " + Texts.excerpt(text.get()) + ", needs " + Expectation.whole(min, max));
        return min;
    }

    /** The meaning of a word; empty after a problem. */
    static <T> Optional<T> choice(Node at, Map<String, T> words) {
        Optional<String> text = at.scalar(Expectation.oneOf(words));
        if (text.isPresent() && !words.containsKey(text.get())) {
            at.problem("got \"" + Texts.excerpt(text.get()) + "\", needs " + Expectation.oneOf(words));
        }
        return text.map(words::get);
    }

    /** Whether a text is one line that can be shown. */
    static boolean isLine(Node at, String text) {
        if (text.isEmpty()) {
            at.problem("the text is empty");
            return false;
        }
        if (text.length() > LONGEST_LINE || text.contains("\n")) {
            at.problem("needs one line of at most " + LONGEST_LINE + " characters");
            return false;
        }
        return isVisible(at, text);
    }

    /** Whether a text has no hidden characters. */
    static boolean isVisible(Node at, String text) {
        OptionalInt hidden = text.codePoints()
                .filter(c -> Texts.isHidden(c) && c != '\n' && c != '\t')
                .findFirst();
        if (hidden.isPresent()) {
            at.problem(String.format("holds the control character U+%04X, leave it out", hidden.getAsInt()));
            return false;
        }
        return true;
    }
}
