package eddyreach.field.axial;

import eddyreach.materials.Material;
import eddyreach.mesh.Axis;
import eddyreach.numerics.GaussLegendre;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Losses of a field by part, as series resistances per ampere of coil current: with peak phasors the mean power in a part is
 * R I^2 / 2,
 *
 * <pre>R_part = 2 pi int [w^2 sigma |A|^2 + (w / mu0) Im(1/mu_r) |B|^2] r dr dz,</pre>
 *
 * A in a slit body being less by the voltage round it.
 */
final class LossIntegrals {

    private LossIntegrals() {}

    /**
     * Losses of the parts of a layout.
     *
     * @param field field of one ampere
     * @param layout the problem
     * @param media what its parts are made of
     * @param omega angular frequency, rad/s
     * @return loss resistance of each part, ohm
     */
    static double[] byPart(MeshField field, Layout layout, Media media, double omega) {
        double[] loss = new double[layout.parts.size()];
        Axis r = layout.mesh.r();
        for (int er = 0; er < r.elements(); er++) {
            column(field, layout, media, er, loss);
        }
        for (int p = 0; p < loss.length; p++) {
            loss[p] *= 2 * Math.PI * omega / Material.MU0;
        }
        return loss;
    }

    /** Adds the integrals over the lossy cells of one column, whose waves share their functions of r. */
    private static void column(MeshField field, Layout layout, Media media, int er, double[] loss) {
        Axis r = layout.mesh.r();
        Axis z = layout.mesh.z();
        int[] lossy = IntStream.range(0, z.elements())
                .filter(ez -> lossy(media, layout.part[ez * r.elements() + er]))
                .toArray();
        IntStream.of(lossy)
                .filter(ez -> !layout.mesh.inPlace(ez * r.elements() + er))
                .forEach(ez -> slanted(field, layout, media, er, ez, loss));
        int[] cells = IntStream.of(lossy)
                .filter(ez -> layout.mesh.inPlace(ez * r.elements() + er))
                .toArray();
        if (cells.length == 0) {
            return;
        }
        GaussLegendre ruleR = rule(r, er, field.steepest());
        double[] x = points(r, er, ruleR);
        double[] y = IntStream.of(cells)
                .mapToObj(ez -> points(z, ez, rule(z, ez, field.steepest())))
                .flatMapToDouble(DoubleStream::of)
                .toArray();
        MeshField.Samples s = field.sample(x, y);
        int at = 0;
        for (int ez : cells) {
            int p = layout.part[ez * r.elements() + er];
            GaussLegendre ruleZ = rule(z, ez, field.steepest());
            double sum = 0;
            for (int j = 0; j < ruleZ.size(); j++) {
                for (int i = 0; i < x.length; i++, at++) {
                    sum += ruleR.weight(i) * ruleZ.weight(j) * x[i] * density(field, media, p, x[i], s, at);
                }
            }
            loss[p] += sum * r.length(er) / 2 * z.length(ez) / 2;
        }
    }

    /** The integral over one cell that does not lie where the radial axis says, row by row. */
    private static void slanted(MeshField field, Layout layout, Media media, int er, int ez, double[] loss) {
        Axis r = layout.mesh.r();
        Axis z = layout.mesh.z();
        int p = layout.part[ez * r.elements() + er];
        GaussLegendre ruleR = rule(r, er, field.steepest());
        GaussLegendre ruleZ = rule(z, ez, field.steepest());
        double[] lines = points(r, er, ruleR);
        double[] heights = points(z, ez, ruleZ);
        double sum = 0;
        for (int j = 0; j < heights.length; j++) {
            double height = heights[j];
            double[] x = DoubleStream.of(lines)
                    .map(line -> layout.mesh.slant().at(line, height).radius())
                    .toArray();
            MeshField.Samples s = field.sample(x, new double[] {height});
            for (int i = 0; i < x.length; i++) {
                double stretch = layout.mesh.slant().at(lines[i], height).stretch();
                sum += ruleR.weight(i) * ruleZ.weight(j) * stretch * x[i] * density(field, media, p, x[i], s, i);
            }
        }
        loss[p] += sum * r.length(er) / 2 * z.length(ez) / 2;
    }

    /** w mu0 sigma |A|^2 + Im(1/mu_r) |B|^2 at a point of a part. */
    private static double density(MeshField field, Media media, int p, double r, MeshField.Samples s, int at) {
        double a2 = field.square(p, r, s.aRe()[at], s.aIm()[at]);
        double b2 = s.brRe()[at] * s.brRe()[at]
                + s.brIm()[at] * s.brIm()[at]
                + s.bzRe()[at] * s.bzRe()[at]
                + s.bzIm()[at] * s.bzIm()[at];
        return media.loss()[p] * a2 + media.nuIm()[p] * b2;
    }

    private static boolean lossy(Media media, int part) {
        return part >= 0 && (media.loss()[part] > 0 || media.nuIm()[part] > 0);
    }

    /** A product of two waves exp(kz) is integrated to rounding by about kL / 2 more points on an element of length L. */
    private static GaussLegendre rule(Axis axis, int e, double k) {
        return GaussLegendre.of(
                axis.degree(e) + FieldAccuracy.LOSS_POINTS + (int) Math.ceil(k * axis.length(e) / 2), -1, 1);
    }

    private static double[] points(Axis axis, int e, GaussLegendre rule) {
        double[] x = new double[rule.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = axis.middle(e) + axis.length(e) / 2 * rule.node(i);
        }
        return x;
    }
}
