package eddyreach.study;

import eddyreach.field.DirectSolve;
import eddyreach.geometry.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;

/**
 * A target that dips into a recess, below the plane in which switch and target can be joined: switch, mount and target in one field
 * problem at a few distances, and a polynomial between them.
 *
 * <p>The distances are the extrema of a Chebyshev polynomial between the deepest place and the plane, where the change of the impedance is
 * smooth but for its decay, at both ends of the band of frequencies. Nothing is solved before it is asked for. For several threads.
 */
final class DippedTarget {

    /** Every other of these distances gives a coarser polynomial, whose difference is the error of the interpolation. */
    private static final int INTERVALS = 6;

    private final Bench bench;
    private final List<Part> fixed;
    private final List<Part> target;
    private final double from;
    private final double to;
    private Complex[][] change;

    /** The change falls about as exp(-decay g), which is taken out before it is interpolated, 1/m. */
    private double decay;

    /**
     * @param bench the switch in its mount
     * @param fixed what stands still beside them, such as a background
     * @param target the target's rings, its nearest point in z = 0
     * @param from least distance, m
     * @param to largest distance, m
     */
    DippedTarget(Bench bench, List<Part> fixed, List<Part> target, double from, double to) {
        this.bench = bench;
        this.fixed = List.copyOf(fixed);
        this.target = List.copyOf(target);
        this.from = from;
        this.to = to;
    }

    /** Change of the impedance by the target, ohm. */
    Complex change(double omega, double distance) {
        return interpolated(omega, distance, 1);
    }

    /** What the interpolation may be wrong by, ohm. */
    double error(double omega, double distance) {
        return interpolated(omega, distance, 1)
                .subtract(interpolated(omega, distance, 2))
                .abs();
    }

    private double node(int i) {
        return (from + to) / 2 - (to - from) / 2 * Math.cos(Math.PI * i / INTERVALS);
    }

    private synchronized Complex[][] solved() {
        if (change == null) {
            double[] omega = {bench.band().low(), bench.band().high()};
            Complex[] all = IntStream.range(0, 2 * (INTERVALS + 1))
                    .parallel()
                    .mapToObj(i -> direct(omega[i % 2], node(i / 2)))
                    .toArray(Complex[]::new);
            Complex[][] byFrequency = new Complex[2][INTERVALS + 1];
            for (int i = 0; i < all.length; i++) {
                byFrequency[i % 2][i / 2] = all[i];
            }
            change = byFrequency;
            decay = Math.log(change[0][0].abs() / change[0][INTERVALS].abs()) / (to - from);
        }
        return change;
    }

    private Complex direct(double omega, double distance) {
        List<Part> around = new ArrayList<>(bench.parts());
        around.addAll(fixed);
        return new DirectSolve(
                        around,
                        bench.coil(omega),
                        target.stream().map(p -> p.shifted(distance)).toList(),
                        omega,
                        bench.celsius(),
                        bench.resolution().body(),
                        bench.scale())
                .change();
    }

    /** Barycentric interpolation through every stride-th node; dZ / w is linear in w, as everywhere. */
    private Complex interpolated(double omega, double distance, int stride) {
        Complex[][] z = solved();
        double low = bench.band().low();
        double high = bench.band().high();
        double t = (omega - low) / (high - low);
        Complex sum = Complex.ZERO;
        double weights = 0;
        for (int i = 0; i <= INTERVALS; i += stride) {
            Complex value = z[0][i].multiply((1 - t) * omega / low)
                    .add(z[1][i].multiply(t * omega / high))
                    .multiply(Math.exp(decay * (node(i) - distance)));
            double off = distance - node(i);
            if (off == 0) {
                return value;
            }
            double w = (i / stride % 2 == 0 ? 1 : -1) * (i == 0 || i == INTERVALS ? 0.5 : 1) / off;
            sum = sum.add(value.multiply(w));
            weights += w;
        }
        return sum.divide(weights);
    }
}
