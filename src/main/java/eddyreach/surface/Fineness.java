package eddyreach.surface;

import eddyreach.numerics.Require;

/**
 * Sizes of the panels of a body.
 *
 * @param edge smallest size at sharp edges, m
 * @param growth ratio of neighbouring sizes away from an edge, above 1
 * @param largest largest size, m
 */
public record Fineness(double edge, double growth, double largest) {

    public Fineness {
        Require.positive("size at edges", edge, "m");
        Require.positive("growth less 1", growth - 1, "");
        Require.positive("largest size less that at edges", largest - edge, "m");
    }

    /** Coordinates from a to b with small cells at ends that are sharp, symmetric when both are alike. */
    double[] between(double a, double b, boolean sharpA, boolean sharpB) {
        double length = Math.abs(b - a);
        if (sharpA && sharpB) {
            double[] half = from(length / 2);
            int n = half.length - 1;
            double[] out = new double[2 * n + 1];
            for (int i = 0; i <= n; i++) {
                double t = half[i] / length;
                out[i] = a + t * (b - a);
                out[2 * n - i] = b - t * (b - a);
            }
            return out;
        }
        double[] steps = from(length);
        if (!sharpA && !sharpB) {
            int n = (int) Math.ceil(length / largest * (1 - 1e-9));
            steps = new double[n + 1];
            for (int i = 0; i <= n; i++) {
                steps[i] = length * i / n;
            }
        }
        double[] out = new double[steps.length];
        for (int i = 0; i < out.length; i++) {
            int j = out.length - 1 - i;
            out[i] = sharpA || !sharpB ? a + steps[i] / length * (b - a) : b - steps[j] / length * (b - a);
        }
        return out;
    }

    /** Coordinates from 0, where cells are smallest, to a length. */
    private double[] from(double length) {
        int n = 0;
        double sum = 0;
        double step = edge;
        while (sum < length * (1 - 1e-9)) {
            sum += step;
            step = Math.min(step * growth, largest);
            n++;
        }
        double[] out = new double[n + 1];
        step = edge * length / sum;
        for (int i = 1; i <= n; i++) {
            out[i] = out[i - 1] + step;
            step = Math.min(step * growth, largest * length / sum);
        }
        out[n] = length;
        return out;
    }
}
