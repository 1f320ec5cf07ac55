package eddyreach.kinds.series;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.switching.RandomStream;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Distances of any unit of a series from few computed ones: the logarithm of the tank's conductance is a Chebyshev series over the distance whose coefficients are a
 * {@link Response} to the deviations, for the target and, for the trim, for the standard target.
 */
final class UnitModel {

    /** Coordinates of which all pairs are computed. */
    private static final int CROSSED = 4;

    private static final int NODES = 17;
    private static final int STANDARD_NODES = 9;

    /** Ends of the distances, over the nominal on distance. */
    private static final double NEAR = 0.3;

    private static final double FAR = 2.2;

    /** Ends of the distances of the standard target, over the effective distance: wide enough for the largest error of trim and travel. */
    private static final double STANDARD_NEAR = 0.75;

    private static final double STANDARD_FAR = 1.5;

    /** Intervals in which a crossing is looked for, and how closely it is found, as a share of the range. */
    private static final int INTERVALS = 16;

    private static final double FOUND = 1e-7;

    private final SeriesInput study;
    private final Trim nominal;
    private final double[] reach;
    private final Chebyshev distances;
    private final Response target;
    private final Chebyshev standardDistances;
    private final Response standard;

    /**
     * Computes the pieces that the model needs.
     *
     * @param pieces computes them
     * @param on on distance of the nominal piece, m
     */
    UnitModel(Pieces pieces, double on) {
        study = pieces.study();
        nominal = pieces.step().trim();
        double sr = study.switchModel().effectiveDistance();
        reach = Arrays.stream(Factor.values()).mapToDouble(pieces::reach).toArray();
        distances = new Chebyshev(NEAR * on, FAR * on, NODES);
        standardDistances = new Chebyshev(STANDARD_NEAR * sr, STANDARD_FAR * sr, STANDARD_NODES);
        target = fit(f -> f.solved(), u -> {
            ConductanceCurve curve = pieces.target(deviation(u));
            double[] y = distances.coefficients(d -> Math.log(curve.conductance(d)), 1);
            y[NODES] = Math.log(curve.free());
            return y;
        });
        standard = fit(Factor::ofSwitch, u -> {
            ConductanceCurve curve = pieces.standard(deviation(u));
            return standardDistances.coefficients(d -> Math.log(curve.conductance(d)), 0);
        });
    }

    private Response fit(Predicate<Factor> counts, Function<double[], double[]> solve) {
        List<Response.Axis> axes = new ArrayList<>();
        study.tolerances().factors().stream()
                .filter(counts)
                .forEach(f -> axes.add(
                        f == Factor.OFFSET
                                ? new Response.Axis(f.ordinal(), 0.5, 1)
                                : new Response.Axis(f.ordinal(), -1, 1)));
        return Response.fit(Factor.values().length, axes, solve, y -> Math.abs(y[0]), CROSSED);
    }

    /** Deviations that belong to coordinates. */
    private double[] deviation(double[] u) {
        double[] d = new double[u.length];
        for (Factor f : Factor.values()) {
            int i = f.ordinal();
            // the effect of an offset is even: its square is the coordinate
            d[i] = f == Factor.OFFSET ? reach[i] * Math.sqrt(u[i]) : reach[i] * u[i];
        }
        return d;
    }

    private double coordinate(int i, double deviation) {
        if (deviation == 0) {
            return 0;
        }
        double x = deviation / reach[i];
        return i == Factor.OFFSET.ordinal() ? x * x : x;
    }

    /**
     * Distances of one unit.
     *
     * @param on where it switches on, m; 0 when nowhere, infinite when it is on without a target
     * @param off where it switches off, m; 0 when it is never on, infinite when it does not within the range
     * @param effective its own effective distance on the standard target, m; NaN outside the range computed
     */
    record Distances(double on, double off, double effective) {}

    /** A place for one thread's intermediate numbers. */
    final class Worker {

        private final double[] deviation = new double[reach.length];
        private final double[] u = new double[reach.length];
        private final double[] y = new double[target.length()];
        private final double[] z = new double[standard.length()];

        /** Draws a unit. */
        double[] draw(RandomStream stream, long unit) {
            for (Factor f : study.tolerances().factors()) {
                deviation[f.ordinal()] = study.tolerances().deviation(f, stream, unit);
            }
            return deviation;
        }

        /** The distances of a unit with given deviations. */
        Distances distances(double[] d) {
            for (int i = 0; i < u.length; i++) {
                u[i] = coordinate(i, d[i]);
            }
            target.value(u, y);
            standard.value(u, z);
            double sr = study.switchModel().effectiveDistance() * (1 + d[Factor.TRIM.ordinal()]);
            boolean trimmed = study.tolerances().trimmed();
            double on = trimmed ? standardDistances.value(z, sr) : Math.log(nominal.on());
            double off = trimmed
                    ? standardDistances.value(z, sr * (1 + study.switchModel().differentialTravel()))
                    : Math.log(nominal.off());
            double effective = trimmed ? sr : inwards(standardDistances, z, on);
            if (y[NODES] >= on) {
                return new Distances(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, effective);
            }
            double onAt = inwards(distances, y, on);
            if (Double.isNaN(onAt)) {
                return new Distances(0, 0, effective);
            }
            double offAt = outwards(distances, y, off, onAt);
            return new Distances(
                    Pieces.finished(onAt, d), Double.isInfinite(offAt) ? offAt : Pieces.finished(offAt, d), effective);
        }
    }

    /** The largest distance at which a series reaches a level; NaN when nowhere. */
    private static double inwards(Chebyshev series, double[] c, double level) {
        double step = (series.high() - series.low()) / INTERVALS;
        double far = series.high();
        for (int i = 1; i <= INTERVALS; i++) {
            double near = series.high() - i * step;
            if (series.value(c, near) >= level) {
                return crossing(series, c, level, near, far);
            }
            far = near;
        }
        return Double.NaN;
    }

    /** The first distance from one on at which a series falls below a level; infinite when nowhere. */
    private static double outwards(Chebyshev series, double[] c, double level, double from) {
        double step = (series.high() - series.low()) / INTERVALS;
        double near = from;
        while (near < series.high()) {
            double far = Math.min(series.high(), near + step);
            if (series.value(c, far) < level) {
                return crossing(series, c, level, near, far);
            }
            near = far;
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Between a place where the series is above the level and one where it is below, by false position with halved weights. */
    private static double crossing(Chebyshev series, double[] c, double level, double above, double below) {
        double a = above;
        double b = below;
        double fa = series.value(c, a) - level;
        double fb = series.value(c, b) - level;
        double close = FOUND * (series.high() - series.low());
        while (b - a > close) {
            double x = a + (b - a) * fa / (fa - fb);
            double f = series.value(c, x) - level;
            if (Math.abs(f) < FOUND) {
                return x;
            }
            if (f > 0) {
                a = x;
                fa = f;
                fb /= 2;
            } else {
                b = x;
                fb = f;
                fa /= 2;
            }
        }
        return (a + b) / 2;
    }
}
