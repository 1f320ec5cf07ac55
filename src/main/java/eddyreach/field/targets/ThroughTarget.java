package eddyreach.field.targets;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.FrequencyPair;
import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.List;
import org.ejml.data.ZMatrixRMaj;

/**
 * A bounded target made of rings with what it lets through and around it: its operators for waves from below and from above. With
 * something behind it, see {@link BackedTarget}.
 *
 * <p>Both directions are one scattering problem: a wave exp(kz) that comes from above is, but for its sign, the wave J1(kr) exp(-kz)
 * of the wavenumber -k.
 */
public final class ThroughTarget {

    private final WaveBasis basis;
    private final FrequencyPair pair;
    private final double thickness;

    /**
     * @param parts the target's rings, z from 0 upwards
     * @param basis waves on both sides
     * @param band angular frequencies to cover
     * @param celsius temperature of the target
     * @param resolution how fine
     * @param scale radius of the coil's core, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public ThroughTarget(
            List<Part> parts, WaveBasis basis, Band band, double celsius, Resolution resolution, double scale) {
        this.basis = basis;
        thickness = parts.stream().mapToDouble(p -> p.section().z1()).max().orElse(0);
        Layout layout = new Layout(parts, null, bothWays(basis), -1, resolution.target(), scale, band.high(), celsius);
        pair = FrequencyPair.solve(layout, omega -> null, band, celsius, false);
    }

    /** Each wavenumber with both signs; the largest stands last, as in every basis. */
    private static WaveBasis bothWays(WaveBasis basis) {
        int n = basis.size();
        double[] k = new double[2 * n];
        double[] w = new double[2 * n];
        for (int i = 0; i < n; i++) {
            k[i] = -basis.k()[i];
            k[n + i] = basis.k()[i];
            w[i] = basis.w()[i];
            w[n + i] = basis.w()[i];
        }
        return new WaveBasis(k, w);
    }

    /** The waves on both sides. */
    WaveBasis basis() {
        return basis;
    }

    /** From its near to its far face, m. */
    double thickness() {
        return thickness;
    }

    /**
     * The operators, with square roots of the weights on both sides. Waves below refer to the near face, waves above to the far one.
     *
     * @param below from below back to below
     * @param through from below to above, what passes without meeting the target included; its transpose leads down
     * @param above from above back to above
     */
    record Ports(ZMatrixRMaj below, ZMatrixRMaj through, ZMatrixRMaj above) {}

    /** The operators at an angular frequency. */
    Ports at(double omega) {
        int n = basis.size();
        double[][] s = pair.response(omega);
        Ports ports = new Ports(new ZMatrixRMaj(n, n), new ZMatrixRMaj(n, n), new ZMatrixRMaj(n, n));
        for (int i = 0; i < n; i++) {
            double up = Math.exp(-basis.k()[i] * thickness);
            for (int j = 0; j < n; j++) {
                double down = Math.exp(-basis.k()[j] * thickness);
                set(ports.below, i, j, s, (n + i) * 2 * n + n + j, 1);
                // the wave of -k is minus the wave from above
                set(ports.through, i, j, s, i * 2 * n + n + j, -up);
                set(ports.above, i, j, s, i * 2 * n + j, up * down);
            }
            ports.through.setReal(i, i, ports.through.getReal(i, i) + up);
        }
        return ports;
    }

    private static void set(ZMatrixRMaj m, int i, int j, double[][] s, int at, double factor) {
        m.set(i, j, factor * s[0][at], factor * s[1][at]);
    }
}
