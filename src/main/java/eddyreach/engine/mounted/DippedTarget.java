package eddyreach.engine.mounted;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
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
 * <p>The change of the impedance over the angular frequency is followed by a {@link DistanceFit} at the lower end of the band of frequencies,
 * through twice as many distances until that is good enough, and what it is at the upper end over that by another one. Nothing is solved
 * before it is asked for. For several threads.
 *
 * <p>A ball is made of discs here. At the plane the exact ball is known, and its ratio to the discs there is taken below as well. Above the
 * plane the ratio can be followed, and what it changes by as far above as the target dips below tells how far it may change there.
 *
 * <p>A variant, of a little other materials or temperature, is followed by its ratio to what it is a variant of, which changes so little over
 * the depth that the first few distances at the lower end of the band are enough; what it changes by towards the upper end is asked at the
 * least distance alone, where the frequency is highest.
 */
public final class DippedTarget {

    private final SolvedSwitch solved;
    private final List<Part> fixed;
    private final List<Part> target;
    private final Optional<TargetField> exact;
    private final double from;
    private final double to;
    private DistanceFit low;

    /** The change at the upper end of the band over that at the lower. */
    private DistanceFit rise;

    /** The change at the first distances, before it is refined and matched, at the lower end of the band. */
    private Complex[] first;

    /** The same at the least distance at the upper end. */
    private Complex firstAbove;

    /** What this is a variant of; empty when it is none. */
    private final Optional<DippedTarget> base;

    /** A variant's change over that of the base, and how many times as much at the upper end of the band. */
    private DistanceFit ratio;

    private Complex higher;

    /** Relative change of the ratio of the exact target to its discs by as much above the plane as it may dip below; 0 when it is exact. */
    private double drift;

    /** Its imaginary part: for good conductors much smaller, and it alone turns reactance into resistance. */
    private double turn;

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
        this.base = base;
        this.solved = solved;
        this.fixed = List.copyOf(fixed);
        this.target = List.copyOf(target);
        this.exact = exact;
        this.from = from;
        this.to = to;
    }

    /** A variant of this one at the same distances, see above. */
    DippedTarget variant(SolvedSwitch other, List<Part> standing, List<Part> rings) {
        return new DippedTarget(other, standing, rings, Optional.empty(), from, to, Optional.of(this));
    }

    /**
     * Change of the impedance by the target, ohm; dZ / w is linear in w, as everywhere.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex change(double omega, double distance) {
        if (base.isPresent()) {
            DippedTarget like = base.get();
            follow(like);
            double t = like.share(omega);
            return like.change(omega, distance)
                    .multiply(ratio.at(distance))
                    .multiply(higher.multiply(t).add(1 - t));
        }
        solve();
        double t = share(omega);
        double lower = solved.band().low();
        double upper = solved.band().high();
        return low.at(distance)
                .multiply(rise.at(distance).multiply(t / upper).add((1 - t) / lower))
                .multiply(omega);
    }

    /**
     * What the interpolation may be wrong by, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double error(double omega, double distance) {
        double size = change(omega, distance).abs();
        DippedTarget like = base.orElse(this);
        return size * (like.low.error() + Math.abs(like.share(omega)) * like.rise.error());
    }

    private double share(double omega) {
        return (omega - solved.band().low())
                / (solved.band().high() - solved.band().low());
    }

    /** What the steps that stand for the target may make of resistance and reactance that is wrong, ohm; 0 when there are none. */
    Complex stairs(double omega, double distance) {
        Complex z = change(omega, distance);
        double share = AccuracyPolicy.BALL_STEPS_BELOW * (to - distance) / (to - from);
        double r = Math.abs(z.getReal());
        double x = Math.abs(z.getImaginary());
        return new Complex(r * drift + x * turn, x * drift + r * turn).multiply(share);
    }

    private double soft() {
        return AccuracyPolicy.DIP_SOFT * solved.scale();
    }

    private synchronized void solve() {
        if (low != null) {
            return;
        }
        int n = AccuracyPolicy.DIP_INTERVALS;
        Complex[] lower = direct(solved.band().low(), n, new Complex[n + 1]);
        Complex[] upper = direct(solved.band().high(), n, new Complex[n + 1]);
        first = lower;
        firstAbove = upper[0];
        Complex[] stronger = {Complex.ONE, Complex.ONE};
        if (exact.isPresent()) {
            stronger[0] = match(exact.get(), solved.band().low(), lower[n]);
            stronger[1] = match(exact.get(), solved.band().high(), upper[n]);
        }
        Complex[] over = new Complex[n + 1];
        for (int i = 0; i <= n; i++) {
            over[i] = upper[i].multiply(stronger[1]).divide(lower[i].multiply(stronger[0]));
        }
        DistanceFit fit = fit(lower, stronger[0]);
        while (fit.error() > AccuracyPolicy.DIP_TOLERANCE && n < AccuracyPolicy.MOST_DIP_INTERVALS) {
            Complex[] more = new Complex[2 * n + 1];
            for (int i = 0; i <= n; i++) {
                more[2 * i] = lower[i];
            }
            n *= 2;
            lower = direct(solved.band().low(), n, more);
            fit = fit(lower, stronger[0]);
        }
        rise = new DistanceFit(from, to, soft(), over);
        low = fit;
    }

    /** Solves the first distances as a variant of another. */
    private synchronized void follow(DippedTarget like) {
        if (ratio != null) {
            return;
        }
        like.solve();
        int n = AccuracyPolicy.DIP_INTERVALS;
        double low = like.solved.band().low();
        double high = like.solved.band().high();
        Complex[] all = IntStream.rangeClosed(0, n + 1)
                .parallel()
                .mapToObj(i -> i > n
                        ? direct(high, from).divide(like.firstAbove)
                        : direct(low, DistanceFit.node(from, to, soft(), i, n)).divide(like.first[i]))
                .toArray(Complex[]::new);
        higher = all[n + 1].divide(all[0]);
        ratio = new DistanceFit(from, to, soft(), Arrays.copyOf(all, n + 1));
    }

    private DistanceFit fit(Complex[] found, Complex ratio) {
        return new DistanceFit(
                from, to, soft(), Stream.of(found).map(z -> z.multiply(ratio)).toArray(Complex[]::new));
    }

    /** Solves the distances whose values are missing. */
    private Complex[] direct(double omega, int n, Complex[] values) {
        IntStream.rangeClosed(0, n)
                .parallel()
                .filter(i -> values[i] == null)
                .forEach(i -> values[i] = direct(omega, DistanceFit.node(from, to, soft(), i, n)));
        return values;
    }

    /** What makes the discs as strong as what they stand for, given what they do at the plane. */
    private Complex match(TargetField exactly, double omega, Complex atPlane) {
        Complex ratio = solved.change(exactly, omega, to).divide(atPlane);
        double above = to + (to - from);
        Complex there = solved.change(exactly, omega, above).divide(direct(omega, above));
        Complex d = there.divide(ratio).subtract(1);
        drift = Math.max(drift, Math.abs(d.getReal()));
        turn = Math.max(turn, Math.abs(d.getImaginary()));
        return ratio;
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
}
