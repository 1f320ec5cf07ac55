package eddyreach.engine.assure;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TargetEffect;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import eddyreach.switching.Trim;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A target before a switch, sampled once over the distance, so that any thresholds can be tried on it.
 *
 * <p>The logarithm of the conductance is a cubic spline through {@value AccuracyPolicy#SPLINE_NODES} nodes, closer together near the face.
 * Where the target may dip into a recess, what is above its metal is sampled first; what is below only when the answer may lie there.
 */
public final class ConductanceCurve {

    private final PolynomialSplineFunction logarithm;
    private final double free;
    private final double from;
    private final double reach;
    private final Optional<MountedSwitch> recess;
    private PolynomialSplineFunction below;

    /**
     * Samples a target before a switch, both solved.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public ConductanceCurve(SolvedSwitch solved, PlacedTarget field) {
        from = 0;
        reach = AccuracyPolicy.SPLINE_REACH * solved.model().ratedDistance();
        free = solved.free().conductance();
        recess = Optional.empty();
        TargetEffect effect = solved.effect(field, nearest(solved));
        logarithm = sampled(from, reach, g -> Math.log(solved.state(effect, g).conductance()));
    }

    /**
     * In a mount.
     *
     * @param room largest distance that a background leaves, m; infinite without one
     */
    ConductanceCurve(MountedSwitch mounted, double room) {
        SolvedSwitch solved = mounted.solved();
        double end = Math.min(
                room,
                mounted.floor() + AccuracyPolicy.SPLINE_REACH * solved.model().ratedDistance());
        boolean parted = mounted.dips() && solved.plane() < end;
        from = parted ? solved.plane() : mounted.floor();
        reach = end;
        free = mounted.without().conductance();
        recess = parted ? Optional.of(mounted) : Optional.empty();
        logarithm = sampled(from, reach, g -> Math.log(mounted.state(g).conductance()));
    }

    /**
     * Solves a target and samples it before a switch.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ConductanceCurve of(SolvedSwitch solved, Target target) {
        return new ConductanceCurve(solved, solved.target(target));
    }

    /** Distance below which azimuthal orders that matter there alone are left out, m. */
    static double nearest(SolvedSwitch solved) {
        return AccuracyPolicy.NEAREST_ORDERS * solved.model().ratedDistance();
    }

    private static PolynomialSplineFunction sampled(double from, double to, DoubleUnaryOperator curve) {
        double[] g = new double[AccuracyPolicy.SPLINE_NODES];
        double[] y = new double[AccuracyPolicy.SPLINE_NODES];
        for (int i = 0; i < AccuracyPolicy.SPLINE_NODES; i++) {
            g[i] = from + (to - from) * Math.pow(i / (AccuracyPolicy.SPLINE_NODES - 1.0), 1.5);
            y[i] = curve.applyAsDouble(g[i]);
        }
        return new SplineInterpolator().interpolate(g, y);
    }

    /**
     * Loss conductance of the tank at a distance, S.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public double conductance(double distance) {
        if (distance < from && recess.isPresent()) {
            return Math.exp(below().value(Math.max(recess.get().floor(), distance)));
        }
        return Math.exp(logarithm.value(Math.max(from, Math.min(reach, distance))));
    }

    private synchronized PolynomialSplineFunction below() {
        if (below == null) {
            MountedSwitch mounted = recess.orElseThrow();
            below = sampled(
                    mounted.floor(), from, g -> Math.log(mounted.state(g).conductance()));
        }
        return below;
    }

    /** What the output does with given thresholds above the mount's metal. */
    private SwitchPoints above(Trim trim) {
        return points(trim, from);
    }

    /** Loss conductance without a target, S. */
    public double free() {
        return free;
    }

    /**
     * What the output does with given thresholds, down to where the target is stopped; distances count from there.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SwitchPoints points(Trim trim) {
        return points(trim, recess.map(MountedSwitch::floor).orElse(from));
    }

    private SwitchPoints points(Trim trim, double least) {
        return new SwitchPointFinder(trim, reach - least, AccuracyPolicy.CHEAP_INTERVALS)
                .find(g -> conductance(least + g), free);
    }

    /**
     * Switch-on distance, m; NaN when it does not switch on, infinite when it is on without a target.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public double on(Trim trim) {
        SwitchPoints points = above(trim);
        if (points instanceof SwitchPoints.NeverReleases never && never.onWithoutTarget()) {
            return Double.POSITIVE_INFINITY;
        }
        Optional<Crossing> found = points.on();
        if (found.isPresent() || recess.isEmpty()) {
            return found.map(c -> from + c.distance()).orElse(Double.NaN);
        }
        double floor = recess.get().floor();
        return points(trim).on().map(c -> floor + c.distance()).orElse(Double.NaN);
    }

    /** Distance up to which the output is on all the way from contact, m, at most the range; NaN when there is none. */
    double steadyOn(Trim trim) {
        SwitchPoints points = points(trim);
        if (points instanceof SwitchPoints.NeverReleases never && never.onWithoutTarget()) {
            return points.approach().isEmpty() ? reach : Double.NaN;
        }
        double floor = recess.map(MountedSwitch::floor).orElse(from);
        return points.approach().size() == 1 ? floor + points.approach().get(0).distance() : Double.NaN;
    }

    /**
     * Switch-off distance, m; 0 when it never switches on, infinite when it does not release within the range.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public double off(Trim trim) {
        double least = from;
        SwitchPoints points = above(trim);
        if (points instanceof SwitchPoints.NeverSwitches && recess.isPresent()) {
            least = recess.get().floor();
            points = points(trim);
        }
        if (points instanceof SwitchPoints.NeverSwitches) {
            return 0;
        }
        return points instanceof SwitchPoints.Switches
                ? least + points.off().orElseThrow().distance()
                : Double.POSITIVE_INFINITY;
    }
}
