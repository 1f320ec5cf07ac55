package eddyreach.model.yaml;

import eddyreach.units.Dimension;
import eddyreach.units.Numbers;
import eddyreach.units.Units;
import java.util.List;
import java.util.Map;

/** The words that say what a key needs. */
public final class Expectation {

    private Expectation() {}

    static String of(Dimension dimension) {
        return dimension.noun() + " such as " + dimension.example();
    }

    /** The limits in the unit of the text: percent for a share that was given in percent. */
    static String range(String text, Dimension dimension, double min, double max) {
        if (dimension.equals(Dimension.NONE) && text.endsWith("%")) {
            return Numbers.shortest(100 * min, 6) + " % to " + Numbers.shortest(100 * max, 6) + " %";
        }
        return Units.text(min, dimension) + " to " + Units.text(max, dimension);
    }

    static String whole(int min, int max) {
        return "a whole number from " + min + " to " + max;
    }

    public static String oneOf(Map<String, ?> words) {
        List<String> sorted = words.keySet().stream().sorted().toList();
        return String.join(", ", sorted.subList(0, sorted.size() - 1)) + " or " + sorted.get(sorted.size() - 1);
    }
}
