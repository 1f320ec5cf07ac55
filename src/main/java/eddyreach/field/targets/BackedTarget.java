package eddyreach.field.targets;

import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;
import eddyreach.linalg.SingularMatrixException;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.CommonOps_ZDRM;

/**
 * A bounded target with something else behind it at a distance: a background of metal. Waves run to and fro between them:
 *
 * <pre>a = [B + U^T G (I - A G)^-1 U] b</pre>
 *
 * with B and A the target's reflections on its two sides, U what it lets through, and G the background's reflection seen at the target's
 * far face. No field problem is solved for a distance.
 */
public final class BackedTarget implements TargetField {

    private final ThroughTarget target;
    private final TargetField background;
    private final double behind;

    /**
     * @param target the target
     * @param background what stands behind it, for the same waves
     * @param behind distance from the target's far face to the background, m, not negative
     */
    public BackedTarget(ThroughTarget target, TargetField background, double behind) {
        if (!(behind >= 0)) {
            throw new IllegalArgumentException("distance of the background behind the target: " + behind + " m");
        }
        this.target = target;
        this.background = background;
        this.behind = behind;
    }

    @Override
    public Reflection at(double omega) {
        int n = target.basis().size();
        ThroughTarget.Ports ports = target.at(omega);
        ZMatrixRMaj g = seen(background.at(omega));
        ZMatrixRMaj loop = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.mult(-1, 0, ports.above(), g, loop);
        for (int i = 0; i < n; i++) {
            loop.setReal(i, i, loop.getReal(i, i) + 1);
        }
        ZMatrixRMaj up = new ZMatrixRMaj(n, n);
        if (!CommonOps_ZDRM.solve(loop, ports.through(), up)) {
            throw new SingularMatrixException("the waves between target and background do not settle");
        }
        ZMatrixRMaj down = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.mult(g, up, down);
        ZMatrixRMaj back = new ZMatrixRMaj(n, n);
        ZMatrixRMaj through = new ZMatrixRMaj(n, n);
        CommonOps_ZDRM.transpose(ports.through(), through);
        CommonOps_ZDRM.mult(through, down, back);
        CommonOps_ZDRM.add(ports.below(), back, back);
        double[] re = new double[n * n];
        double[] im = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                re[i * n + j] = back.getReal(i, j);
                im[i * n + j] = back.getImag(i, j);
            }
        }
        return new Reflection.Full(re, im);
    }

    /** The background's reflection, referred to the target's far face. */
    private ZMatrixRMaj seen(Reflection reflection) {
        double[] k = target.basis().k();
        int n = k.length;
        ZMatrixRMaj g = new ZMatrixRMaj(n, n);
        for (int i = 0; i < n; i++) {
            if (reflection instanceof Reflection.Diagonal plate) {
                double e = Math.exp(-2 * k[i] * behind);
                g.set(i, i, e * plate.re()[i], e * plate.im()[i]);
                continue;
            }
            Reflection.Full full = (Reflection.Full) reflection;
            for (int j = 0; j < n; j++) {
                double e = Math.exp(-(k[i] + k[j]) * behind);
                g.set(i, j, e * full.re()[i * n + j], e * full.im()[i * n + j]);
            }
        }
        return g;
    }
}
