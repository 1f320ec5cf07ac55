package eddyreach.model.values;

import eddyreach.units.Units;
import java.util.Collections;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An ISO metric thread of a switch's body.
 *
 * @param nominal major diameter, m
 * @param pitch pitch, m
 */
public record MetricThread(double nominal, double pitch) {

    private static final Pattern NAME = Pattern.compile("M(\\d{1,2}) ?x ?(\\d(?:\\.\\d{1,2})?)");

    /** Clearance holes by nominal diameter, both mm: ISO 273, medium series, from memory. */
    private static final NavigableMap<Integer, Double> CLEARANCE = clearance(
            3, 3.4, 4, 4.5, 5, 5.5, 6, 6.6, 8, 9, 10, 11, 12, 13.5, 14, 15.5, 16, 17.5, 18, 20, 20, 22, 22, 24, 24, 26,
            27, 30, 30, 33, 33, 36, 36, 39, 39, 42, 42, 45, 45, 48, 48, 52, 52, 56, 56, 62, 60, 66, 64, 70);

    private static NavigableMap<Integer, Double> clearance(double... pairs) {
        NavigableMap<Integer, Double> map = new TreeMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((int) pairs[i], pairs[i + 1]);
        }
        return Collections.unmodifiableNavigableMap(map);
    }

    /** A thread from its designation, such as {@code M18 x 1}; empty for anything else, or a size without a clearance hole. */
    public static Optional<MetricThread> of(String designation) {
        Matcher m = NAME.matcher(designation);
        if (!m.matches() || !CLEARANCE.containsKey(Integer.parseInt(m.group(1)))) {
            return Optional.empty();
        }
        double nominal = Integer.parseInt(m.group(1)) * 1e-3;
        double pitch = Double.parseDouble(m.group(2)) * 1e-3;
        return pitch > 0 && pitch < nominal / 4 ? Optional.of(new MetricThread(nominal, pitch)) : Optional.empty();
    }

    /** Diameter of the clearance hole, m: ISO 273, medium series, from memory. */
    public double clearance() {
        return CLEARANCE.get((int) Math.round(nominal * 1e3)) * 1e-3;
    }

    /** Minor diameter of the internal thread, m: 1.0825 pitches below the nominal one (ISO 68-1, from memory). */
    public double minor() {
        return nominal - 1.0825 * pitch;
    }

    /** Its designation. */
    public String text() {
        return "M" + Math.round(nominal * 1e3) + " x " + Units.length(pitch).replace(" mm", "");
    }
}
