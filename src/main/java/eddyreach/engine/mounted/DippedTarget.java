package eddyreach.engine.mounted;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.join.TargetField;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.complex.Complex;

/**
 * A target that dips into a recess, below the plane in which switch and target can be joined: switch, mount and target in one field
 * problem at a few distances, and a polynomial between them.
 *
 * <p>The distances are the extrema of a Chebyshev polynomial between the deepest place and the plane, where the change of the impedance is
 * smooth but for its decay, at both ends of the band of frequencies. Nothing is solved before it is asked for. For several threads.
 *
 * <p>A ball is made of discs here. At the plane the exact ball is known, and its ratio to the discs there is taken below as well. Above the
 * plane the ratio can be followed, and what it changes by as far above as the target dips below tells how far it may change there.
 *
 * <p>A variant, of a little other materials or temperature, is followed by its ratio to what it is a variant of, which changes so little over
 * the depth that every other distance is enough.
 */
public final class DippedTarget {

    private final SolvedSwitch solved;
    private final List<Part> fixed;
    private final List<Part> target;
    private final Optional<TargetField> exact;
    private final double from;
    private final double to;
    private final Band band;

    /** What this is a variant of; empty when it is none. */
    private final Optional<DippedTarget> base;

    private Complex[][] change;

    /** The same before it is matched to an exact target. */
    private Complex[][] raw;

    /** Relative change of the ratio of the exact target to its discs by as much above the plane as it may dip below; 0 when it is exact. */
    private double drift;

    /** Its imaginary part: for good conductors much smaller, and it alone turns reactance into resistance. */
    private double turn;

    /** The change falls about as exp(-decay g), which is taken out before it is interpolated, 1/m. */
    private double decay;

    /**
     * @param solved the switch in its mount
     * @param fixed what stands still beside them, such as a background
     * @param target the target's rings, its nearest point in z = 0
     * @param exact the target that these rings only stand for; empty when they are the target
     * @param from least distance, m
     * @param to largest distance, m; not below the plane where the exact target is given
     */
    public DippedTarget(
            SolvedSwitch solved,
            List<Part> fixed,
            List<Part> target,
            Optional<TargetField> exact,
            double from,
            double to) {
        this(solved, fixed, target, exact, from, to, Optional.empty());
    }

    private DippedTarget(
            SolvedSwitch solved,
            List<Part> fixed,
            List<Part> target,
            Optional<TargetField> exact,
            double from,
            double to,
            Optional<DippedTarget> base) {
        this.solved = solved;
        this.fixed = List.copyOf(fixed);
        this.target = List.copyOf(target);
        this.exact = exact;
        this.from = from;
        this.to = to;
        this.base = base;
        band = base.map(b -> b.band).orElse(solved.band());
    }

    /** A variant of this one at the same distances, see above. */
    DippedTarget variant(SolvedSwitch other, List<Part> standing, List<Part> rings) {
        return new DippedTarget(other, standing, rings, Optional.empty(), from, to, Optional.of(this));
    }

    /**
     * Change of the impedance by the target, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex change(double omega, double distance) {
        return interpolated(omega, distance, 1);
    }

    /**
     * What the interpolation may be wrong by, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double error(double omega, double distance) {
        return interpolated(omega, distance, 1)
                .subtract(interpolated(omega, distance, 2))
                .abs();
    }

    /** What the steps that stand for the target may make of resistance and reactance that is wrong, ohm; 0 when there are none. */
    Complex stairs(double omega, double distance) {
        Complex z = change(omega, distance);
        double share = AccuracyPolicy.BALL_STEPS_BELOW * (to - distance) / (to - from);
        double r = Math.abs(z.getReal());
        double x = Math.abs(z.getImaginary());
        return new Complex(r * drift + x * turn, x * drift + r * turn).multiply(share);
    }

    private double node(int i) {
        return (from + to) / 2 - (to - from) / 2 * Math.cos(Math.PI * i / AccuracyPolicy.DIP_INTERVALS);
    }

    private synchronized Complex[][] solutions() {
        if (change == null) {
            base.ifPresentOrElse(this::follow, this::solve);
            decay = Math.log(change[0][0].abs() / change[0][AccuracyPolicy.DIP_INTERVALS].abs()) / (to - from);
        }
        return change;
    }

    /** Both ends of the band at all distances. */
    private void solve() {
        double[] omega = {band.low(), band.high()};
        Complex[] all = IntStream.range(0, 2 * (AccuracyPolicy.DIP_INTERVALS + 1))
                .parallel()
                .mapToObj(i -> direct(omega[i % 2], node(i / 2)))
                .toArray(Complex[]::new);
        Complex[][] byFrequency = new Complex[2][AccuracyPolicy.DIP_INTERVALS + 1];
        for (int i = 0; i < all.length; i++) {
            byFrequency[i % 2][i / 2] = all[i];
        }
        raw = Stream.of(byFrequency).map(Complex[]::clone).toArray(Complex[][]::new);
        exact.ifPresent(e -> match(e, omega, byFrequency));
        change = byFrequency;
    }

    /**
     * The ratio to what this is a variant of, a polynomial through every other distance at the low end of the band; near the face, where the
     * frequency is high, times what it changes by towards the high end.
     */
    private void follow(DippedTarget like) {
        Complex[][] known = like.solutions();
        int n = AccuracyPolicy.DIP_INTERVALS;
        Complex[] all = IntStream.rangeClosed(0, n / 2 + 1)
                .parallel()
                .mapToObj(i -> i > n / 2
                        ? direct(band.high(), node(0)).divide(like.raw[1][0])
                        : direct(band.low(), node(2 * i)).divide(like.raw[0][2 * i]))
                .toArray(Complex[]::new);
        Complex[] ratio = Arrays.copyOf(all, n / 2 + 1);
        Complex higher = all[n / 2 + 1].divide(ratio[0]);
        change = new Complex[2][n + 1];
        for (int i = 0; i <= n; i++) {
            Complex r = Complex.ZERO;
            for (int j = 0; j < ratio.length; j++) {
                double weight = 1;
                for (int k = 0; k < ratio.length; k++) {
                    if (k != j) {
                        weight *= (node(i) - node(2 * k)) / (node(2 * j) - node(2 * k));
                    }
                }
                r = r.add(ratio[j].multiply(weight));
            }
            change[0][i] = known[0][i].multiply(r);
            change[1][i] = known[1][i].multiply(r).multiply(higher);
        }
    }

    /** Makes the discs as strong as what they stand for. */
    private void match(TargetField exactly, double[] omega, Complex[][] found) {
        for (int k = 0; k < found.length; k++) {
            Complex ratio = solved.change(exactly, omega[k], to).divide(found[k][AccuracyPolicy.DIP_INTERVALS]);
            for (int i = 0; i <= AccuracyPolicy.DIP_INTERVALS; i++) {
                found[k][i] = found[k][i].multiply(ratio);
            }
            double above = to + (to - from);
            Complex there = solved.change(exactly, omega[k], above).divide(direct(omega[k], above));
            Complex d = there.divide(ratio).subtract(1);
            drift = Math.max(drift, Math.abs(d.getReal()));
            turn = Math.max(turn, Math.abs(d.getImaginary()));
        }
    }

    private Complex direct(double omega, double distance) {
        List<Part> around = new ArrayList<>(solved.parts());
        around.addAll(fixed);
        return new DirectSolve(
                        around,
                        solved.coil(omega),
                        target.stream().map(p -> p.shifted(distance)).toList(),
                        omega,
                        solved.celsius(),
                        solved.resolution().body(),
                        solved.scale())
                .change();
    }

    /** Barycentric interpolation through every stride-th node; dZ / w is linear in w, as everywhere. */
    private Complex interpolated(double omega, double distance, int stride) {
        Complex[][] z = solutions();
        double low = band.low();
        double high = band.high();
        double t = (omega - low) / (high - low);
        Complex sum = Complex.ZERO;
        double weights = 0;
        for (int i = 0; i <= AccuracyPolicy.DIP_INTERVALS; i += stride) {
            Complex value = z[0][i].multiply((1 - t) * omega / low)
                    .add(z[1][i].multiply(t * omega / high))
                    .multiply(Math.exp(decay * (node(i) - distance)));
            double off = distance - node(i);
            if (off == 0) {
                return value;
            }
            double w = (i / stride % 2 == 0 ? 1 : -1) * (i == 0 || i == AccuracyPolicy.DIP_INTERVALS ? 0.5 : 1) / off;
            sum = sum.add(value.multiply(w));
            weights += w;
        }
        return sum.divide(weights);
    }
}
