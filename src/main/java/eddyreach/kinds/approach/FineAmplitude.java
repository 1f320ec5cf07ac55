package eddyreach.kinds.approach;

import eddyreach.engine.core.Curve;
import eddyreach.report.words.Labels;
import java.util.function.DoubleUnaryOperator;
import org.jfree.data.xy.XYSeries;

/**
 * The amplitude between the distances of a curve. The tank's loss falls smoothly with the distance, while the amplitude bends sharply where the
 * oscillation breaks off; hence the logarithm of the loss conductance is interpolated, by a cubic that keeps its monotony (Fritsch and
 * Carlson, SIAM J. Numer. Anal. 17, 1980), and the oscillator makes the amplitude of it. At the curve's own distances it is the curve's.
 */
final class FineAmplitude {

    /** Steps between two distances of the curve. */
    private static final int FINER = 8;

    private final Curve curve;
    private final DoubleUnaryOperator amplitude;
    private final double[] log;
    private final double[] slope;

    /**
     * @param amplitude amplitude, V, over the loss conductance of the tank, S
     */
    FineAmplitude(Curve curve, DoubleUnaryOperator amplitude) {
        this.curve = curve;
        this.amplitude = amplitude;
        int n = curve.size();
        log = new double[n];
        for (int i = 0; i < n; i++) {
            log[i] = Math.log(curve.conductance(i));
        }
        slope = new double[n];
        for (int i = 1; i + 1 < n; i++) {
            double before = secant(i - 1);
            double after = secant(i);
            double h0 = curve.distance(i) - curve.distance(i - 1);
            double h1 = curve.distance(i + 1) - curve.distance(i);
            // the weighted harmonic mean keeps the cubic monotone
            slope[i] = before * after > 0 ? 3 * (h0 + h1) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after) : 0;
        }
        if (n > 1) {
            slope[0] = secant(0);
            slope[n - 1] = secant(n - 2);
        }
    }

    private double secant(int i) {
        return (log[i + 1] - log[i]) / (curve.distance(i + 1) - curve.distance(i));
    }

    /** Amplitude, V, over distance, mm. */
    XYSeries series(int key) {
        XYSeries series = new XYSeries(key, false);
        for (int i = 0; i < curve.size(); i++) {
            series.add(curve.distance(i) * Labels.MM, curve.amplitude(i), false);
            for (int k = 1; k < FINER && i + 1 < curve.size(); k++) {
                double h = curve.distance(i + 1) - curve.distance(i);
                double u = (double) k / FINER;
                double g = Math.exp(hermite(i, u, h));
                series.add((curve.distance(i) + u * h) * Labels.MM, amplitude.applyAsDouble(g), false);
            }
        }
        return series;
    }

    private double hermite(int i, double u, double h) {
        double v = 1 - u;
        return v * v * ((1 + 2 * u) * log[i] + u * h * slope[i])
                + u * u * ((3 - 2 * u) * log[i + 1] - v * h * slope[i + 1]);
    }
}
