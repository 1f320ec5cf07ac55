package eddyreach.kinds.speed;

import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TargetEffect;
import eddyreach.field.join.TargetField;
import eddyreach.model.values.Target;
import eddyreach.switching.Teeth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.complex.Complex;

/**
 * The tank before a row of teeth that has moved by some way.
 *
 * <p>What the teeth near the switch change of the coil's impedance is added up: that they act on each other is left out, which is right while the gaps are not small
 * against the teeth. Between computed positions the conductance is a periodic spline.
 */
final class Row {

    /** Steps of half a pitch. */
    static final int STEPS = 20;

    /** Nodes of the spline beyond either end of a pitch, so that it knows no end. */
    private static final int BEYOND = 6;

    private final double[] conductance = new double[2 * STEPS + 1];
    private final double pitch;

    /**
     * Computes a row.
     *
     * @param step the trimmed switch
     * @param tooth a tooth
     * @param pitch distance from one to the next, m
     * @param distance distance of the row from the active face, m
     */
    Row(ResolutionLadder.Step step, Target tooth, double pitch, double distance) {
        this.pitch = pitch;
        SolvedSwitch solved = step.solved();
        double reach = reach(tooth, solved.scale());
        Target widest = OffAxisLimits.at(tooth, reach, solved.scale());
        TargetField field = solved.about(widest);
        double spacing = pitch / (2 * STEPS);
        List<TargetEffect> at = new ArrayList<>();
        for (int k = 0; k * spacing <= reach; k++) {
            at.add(solved.effect(solved.fields().beside(widest, field, k * spacing), distance));
        }
        IntStream.rangeClosed(0, STEPS).parallel().forEach(i -> {
            List<TargetEffect> near = near(at, i);
            TargetEffect sum =
                    (omega, d) -> near.stream().map(e -> e.change(omega, d)).reduce(Complex.ZERO, Complex::add);
            double g = solved.state(sum, distance).conductance();
            conductance[i] = g;
            conductance[2 * STEPS - i] = g;
        });
    }

    /** Offset up to which a tooth is computed, m: beyond, its loss is below a thousandth of that before the face. */
    static double reach(Target tooth, double scale) {
        return tooth.radius() + 3 * scale;
    }

    /** The teeth within reach when the row has moved by so many steps. */
    private static List<TargetEffect> near(List<TargetEffect> at, int moved) {
        List<TargetEffect> near = new ArrayList<>();
        for (int n = -at.size() / (2 * STEPS) - 1; n <= at.size() / (2 * STEPS) + 1; n++) {
            int k = Math.abs(moved + 2 * STEPS * n);
            if (k < at.size()) {
                near.add(at.get(k));
            }
        }
        return near;
    }

    /** Loss conductance at the computed positions of one pitch, S; the first and the last with a tooth before the face. */
    double[] conductance() {
        return conductance.clone();
    }

    /** The row as the switch in time takes it. */
    Teeth teeth() {
        return teeth(0);
    }

    /** The same with teeth whose edges lie further out all round, m; further in when negative. */
    Teeth teeth(double wider) {
        int n = 2 * STEPS;
        double[] x = new double[n + 1 + 2 * BEYOND];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = pitch * (i - BEYOND) / n;
            y[i] = conductance[Math.floorMod(i - BEYOND, n)];
        }
        PolynomialSplineFunction spline = new SplineInterpolator().interpolate(x, y);
        return new Teeth(way -> spline.value(Math.max(0, Math.min(way, pitch - way) - wider)), pitch);
    }
}
