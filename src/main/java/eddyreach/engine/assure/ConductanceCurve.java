package eddyreach.engine.assure;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TargetEffect;
import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import eddyreach.switching.Trim;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * A target before a switch, sampled once over the distance, so that any thresholds can be tried on it.
 *
 * <p>The logarithm of the conductance is a cubic spline through {@value AccuracyPolicy#SPLINE_NODES} nodes, closer together near the face.
 */
public final class ConductanceCurve {

    private final PolynomialSplineFunction logarithm;
    private final double free;
    private final double reach;

    /**
     * Samples a target before a switch, both solved.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public ConductanceCurve(SolvedSwitch solved, PlacedTarget field) {
        reach = AccuracyPolicy.SPLINE_REACH * solved.model().ratedDistance();
        free = solved.free().conductance();
        double[] g = new double[AccuracyPolicy.SPLINE_NODES];
        double[] y = new double[AccuracyPolicy.SPLINE_NODES];
        TargetEffect effect = solved.effect(
                field, AccuracyPolicy.NEAREST_ORDERS * solved.model().ratedDistance());
        for (int i = 0; i < AccuracyPolicy.SPLINE_NODES; i++) {
            g[i] = reach * Math.pow(i / (AccuracyPolicy.SPLINE_NODES - 1.0), 1.5);
            y[i] = Math.log(solved.state(effect, g[i]).conductance());
        }
        logarithm = new SplineInterpolator().interpolate(g, y);
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

    /** Loss conductance of the tank at a distance, S. */
    public double conductance(double distance) {
        return Math.exp(logarithm.value(Math.min(reach, distance)));
    }

    /** Loss conductance without a target, S. */
    public double free() {
        return free;
    }

    /** What the output does with given thresholds. */
    public SwitchPoints points(Trim trim) {
        DoubleUnaryOperator curve = this::conductance;
        return new SwitchPointFinder(trim, reach, AccuracyPolicy.CHEAP_INTERVALS).find(curve, free);
    }

    /** Switch-on distance, m; NaN when it does not switch on, infinite when it is on without a target. */
    public double on(Trim trim) {
        SwitchPoints points = points(trim);
        if (points instanceof SwitchPoints.NeverReleases never && never.onWithoutTarget()) {
            return Double.POSITIVE_INFINITY;
        }
        return points.on().map(Crossing::distance).orElse(Double.NaN);
    }

    /** Distance up to which the output is on all the way from contact, m, at most the range; NaN when there is none. */
    double steadyOn(Trim trim) {
        SwitchPoints points = points(trim);
        if (points instanceof SwitchPoints.NeverReleases never && never.onWithoutTarget()) {
            return points.approach().isEmpty() ? reach : Double.NaN;
        }
        return points.approach().size() == 1 ? points.approach().get(0).distance() : Double.NaN;
    }

    /** Switch-off distance, m; 0 when it never switches on, infinite when it does not release within the range. */
    public double off(Trim trim) {
        SwitchPoints points = points(trim);
        if (points instanceof SwitchPoints.NeverSwitches) {
            return 0;
        }
        return points instanceof SwitchPoints.Switches
                ? points.off().orElseThrow().distance()
                : Double.POSITIVE_INFINITY;
    }
}
