package eddyreach.kinds.principles;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TargetEffect;
import eddyreach.model.values.Target;
import eddyreach.switching.TankState;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** The whole tank over the distance of a target, sampled once, so that any principle can be tried on it. */
final class TankCurve implements DoubleFunction<TankState> {

    private static final int QUANTITIES = 4;

    private final PolynomialSplineFunction[] splines = new PolynomialSplineFunction[QUANTITIES];
    private final double reach;

    /** Solves a target and samples it before a switch. */
    TankCurve(SolvedSwitch solved, Target target) {
        int n = AccuracyPolicy.SPLINE_NODES;
        reach = reach(solved);
        double[] g = new double[n];
        double[][] y = new double[QUANTITIES][n];
        TargetEffect effect = solved.effect(solved.target(target));
        for (int i = 0; i < n; i++) {
            g[i] = reach * Math.pow(i / (n - 1.0), 1.5);
            TankState s = state(solved.state(effect, g[i]));
            // resistance and conductance fall by orders of magnitude
            y[0][i] = Math.log(s.resistance());
            y[1][i] = s.inductance();
            y[2][i] = Math.log(s.conductance());
            y[3][i] = s.frequency();
        }
        for (int q = 0; q < QUANTITIES; q++) {
            splines[q] = new SplineInterpolator().interpolate(g, y[q]);
        }
    }

    /** End of the distances sampled, m. */
    static double reach(SolvedSwitch solved) {
        return AccuracyPolicy.SPLINE_REACH * solved.model().ratedDistance();
    }

    /** The tank as the principles take it. */
    static TankState state(eddyreach.engine.core.TankState s) {
        return new TankState(s.resistance(), s.inductance(), s.conductance(), s.omega() / (2 * Math.PI));
    }

    @Override
    public TankState apply(double distance) {
        double d = Math.min(reach, distance);
        return new TankState(
                Math.exp(splines[0].value(d)), splines[1].value(d), Math.exp(splines[2].value(d)), splines[3].value(d));
    }
}
