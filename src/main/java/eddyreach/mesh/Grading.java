package eddyreach.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;

/**
 * Collects the coordinates at which elements must end and the sizes wanted beside them, and fills the intervals with
 * elements that grow geometrically away from the fine ends.
 */
final class Grading {

    private static final double SAME = 1e-9;

    private final TreeMap<Double, double[]> marks = new TreeMap<>();
    private final double tolerance;

    /** @param scale length below which two coordinates count as one is 1e-9 of this, m */
    Grading(double scale) {
        tolerance = SAME * scale;
    }

    /**
     * Asks for an element end at x.
     *
     * @param x coordinate, m
     * @param below size wanted just below x, m, infinite if it does not matter
     * @param above size wanted just above x, m, infinite if it does not matter
     */
    void mark(double x, double below, double above) {
        Map.Entry<Double, double[]> near = marks.ceilingEntry(x - tolerance);
        if (near != null && near.getKey() <= x + tolerance) {
            double[] s = near.getValue();
            s[0] = Math.min(s[0], below);
            s[1] = Math.min(s[1], above);
        } else {
            marks.put(x, new double[] {below, above});
        }
    }

    /**
     * Builds the axis.
     *
     * @param growth ratio of the lengths of neighbouring elements
     * @param cap largest length allowed at a coordinate
     * @param degree polynomial degree
     */
    Axis build(double growth, DoubleUnaryOperator cap, int degree) {
        List<Double> ends = new ArrayList<>();
        Map.Entry<Double, double[]> previous = null;
        for (Map.Entry<Double, double[]> m : marks.entrySet()) {
            if (previous != null) {
                fill(ends, previous.getKey(), m.getKey(), previous.getValue()[1], m.getValue()[0], growth, cap);
            }
            ends.add(m.getKey());
            previous = m;
        }
        double[] x = ends.stream().mapToDouble(Double::doubleValue).toArray();
        int[] p = new int[x.length - 1];
        Arrays.fill(p, degree);
        return new Axis(x, p);
    }

    private static void fill(
            List<Double> ends, double a, double b, double ha, double hb, double growth, DoubleUnaryOperator cap) {
        List<Double> right = new ArrayList<>();
        double lo = a;
        double hi = b;
        double up = Math.min(ha, cap.applyAsDouble(a));
        double down = Math.min(hb, cap.applyAsDouble(b));
        while (true) {
            double rest = hi - lo;
            if (rest <= 1.4 * Math.min(up, down)
                    || rest <= Math.max(up, down) && rest <= 1.4 * growth * Math.min(up, down)) {
                break;
            }
            if (up <= down) {
                lo += up;
                ends.add(lo);
                up = Math.min(up * growth, cap.applyAsDouble(lo));
            } else {
                hi -= down;
                right.add(hi);
                down = Math.min(down * growth, cap.applyAsDouble(hi));
            }
        }
        for (int i = right.size() - 1; i >= 0; i--) {
            ends.add(right.get(i));
        }
    }
}
