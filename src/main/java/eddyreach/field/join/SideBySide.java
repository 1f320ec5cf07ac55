package eddyreach.field.join;

import eddyreach.field.axial.Field;
import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.MeshField;
import eddyreach.materials.Material;
import eddyreach.numerics.GaussLegendre;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * Two switches with parallel axes whose faces lie in one plane: no plane of a gap separates them, but the plane midway between their
 * axes does.
 *
 * <p>With A1, H1 the field of one ampere in the first switch alone and A2, H2 that of the second alone, reciprocity (Lorentz) makes the
 * mutual inductance a surface integral over that plane, its normal x pointing to the second:
 *
 * <pre>M = int (A1 x H2 - A2 x H1) . x dS = (1/mu0) int (h/r) (A1 B2z + A2 B1z) dy dz,   r^2 = h^2 + y^2,  h half the spacing</pre>
 *
 * <p>Core and housing of either switch are in its own field, whatever they are made of. Left out is only what goes to the other switch, back
 * and there once more; for coils in air that is nothing and the integral is exact.
 */
public final class SideBySide {

    private static final GaussLegendre RULE = GaussLegendre.of(10, 0, 1);

    private SideBySide() {}

    /**
     * Mutual inductance, H; negative, for the field beside a coil returns.
     *
     * @param one field of one ampere in the first switch alone, about its own axis
     * @param two field of one ampere in the second switch alone, about its own axis
     * @param spacing distance of the axes, m
     */
    public static Complex mutual(Field one, Field two, double spacing) {
        double h = spacing / 2;
        List<double[]> up = panels(h);
        double[] r = new double[up.size()];
        for (int i = 0; i < r.length; i++) {
            r[i] = Math.hypot(h, up.get(i)[0]);
        }
        List<double[]> heights = new ArrayList<>();
        up.forEach(p -> heights.add(new double[] {-p[0], p[1]}));
        Collections.reverse(heights);
        heights.addAll(up);
        double[] z = heights.stream().mapToDouble(p -> p[0]).toArray();
        MeshField.Samples a = one.sample(r, z);
        MeshField.Samples b = two.sample(r, z);
        double re = 0;
        double im = 0;
        for (int j = 0, at = 0; j < z.length; j++) {
            for (int i = 0; i < r.length; i++, at++) {
                // both halves of the plane
                double w = 2 * heights.get(j)[1] * up.get(i)[1] * h / r[i];
                re += w
                        * (a.aRe()[at] * b.bzRe()[at]
                                - a.aIm()[at] * b.bzIm()[at]
                                + b.aRe()[at] * a.bzRe()[at]
                                - b.aIm()[at] * a.bzIm()[at]);
                im += w
                        * (a.aRe()[at] * b.bzIm()[at]
                                + a.aIm()[at] * b.bzRe()[at]
                                + b.aRe()[at] * a.bzIm()[at]
                                + b.aIm()[at] * a.bzRe()[at]);
            }
        }
        return new Complex(re, im).divide(Material.MU0);
    }

    /** Nodes and weights from 0 outwards. */
    private static List<double[]> panels(double h) {
        List<double[]> nodes = new ArrayList<>();
        double from = 0;
        double to = FieldAccuracy.FIRST_PANEL * h;
        while (from < FieldAccuracy.LAST_PANEL * h) {
            for (int i = 0; i < RULE.size(); i++) {
                nodes.add(new double[] {from + (to - from) * RULE.node(i), (to - from) * RULE.weight(i)});
            }
            double length = 2 * (to - from);
            from = to;
            to += length;
        }
        return nodes;
    }
}
