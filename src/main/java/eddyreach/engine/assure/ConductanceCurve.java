package eddyreach.engine.assure;

import eddyreach.engine.core.SolvedSwitch;
import eddyreach.field.join.TargetField;
import eddyreach.model.values.Target;
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
 * <p>The logarithm of the conductance is a cubic spline through {@value #NODES} nodes, closer together near the face.
 */
final class ConductanceCurve {

    /** End of the range in rated distances: beyond 1.43 s_n times the largest factor that a foil can reach. */
    static final double REACH = 3;

    private static final int NODES = 25;

    /**
     * Distance, in rated distances, below which azimuthal orders that matter there alone are left out beside the axis. Of a target and its
     * variants they are a like share, a few per cent of the damping in contact.
     */
    private static final double NEAREST = 0.5;

    private static final int INTERVALS = 90;

    private final PolynomialSplineFunction logarithm;
    private final double free;
    private final double reach;

    ConductanceCurve(SolvedSwitch bench, TargetField field) {
        reach = REACH * bench.model().ratedDistance();
        free = bench.free().conductance();
        double[] g = new double[NODES];
        double[] y = new double[NODES];
        SolvedSwitch.Effect effect = bench.effect(field, NEAREST * bench.model().ratedDistance());
        for (int i = 0; i < NODES; i++) {
            g[i] = reach * Math.pow(i / (NODES - 1.0), 1.5);
            y[i] = Math.log(bench.state(effect, g[i]).conductance());
        }
        logarithm = new SplineInterpolator().interpolate(g, y);
    }

    static ConductanceCurve of(SolvedSwitch bench, Target target) {
        return new ConductanceCurve(bench, bench.target(target));
    }

    /** Loss conductance of the tank at a distance, S. */
    double conductance(double distance) {
        return Math.exp(logarithm.value(Math.min(reach, distance)));
    }

    /** What the output does with given thresholds. */
    SwitchPoints points(Trim trim) {
        DoubleUnaryOperator curve = this::conductance;
        return new SwitchPointFinder(trim, reach, INTERVALS).find(curve, free);
    }

    /** Switch-on distance, m; NaN when it does not switch on, infinite when it is on without a target. */
    double on(Trim trim) {
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
    double off(Trim trim) {
        SwitchPoints points = points(trim);
        if (points instanceof SwitchPoints.NeverSwitches) {
            return 0;
        }
        return points instanceof SwitchPoints.Switches
                ? points.off().orElseThrow().distance()
                : Double.POSITIVE_INFINITY;
    }
}
