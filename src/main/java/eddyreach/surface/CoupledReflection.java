package eddyreach.surface;

import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.OffAxisJoin;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

/**
 * How a body that is not round sends waves back, at one frequency: T = sum over symmetry classes of V C V^T, with V real and C complex
 * symmetric, over all families of waves ({@link WaveLoads}) and wavenumbers, in the convention of order 0 for all of them, with square
 * roots of the weights on both sides; waves have unit size at a distance before the nearest point.
 */
public final class CoupledReflection {

    private final WaveBasis basis;
    private final int orders;
    private final double before;
    private final List<Block> blocks;
    private final AtomicReference<double[]> highestOrder = new AtomicReference<>();

    /**
     * One class.
     *
     * @param span V^T, {@code [vector][family times waves + wave]}
     * @param re real part of C
     * @param im imaginary part
     */
    record Block(double[][] span, double[][] re, double[][] im) {}

    CoupledReflection(WaveBasis basis, int orders, double before, List<Block> blocks) {
        this.basis = basis;
        this.orders = orders;
        this.before = before;
        this.blocks = List.copyOf(blocks);
    }

    /**
     * The body before a switch.
     *
     * @param join the switch at the same frequency, with the same waves
     * @param offset distance of the body's vertical axis from that of the switch, m, not negative
     * @param angle angle by which the body is turned about its axis, from the direction of the offset, rad
     */
    public Placed before(OffAxisJoin join, double offset, double angle) {
        return new Placed(join, this, offset, angle);
    }

    WaveBasis basis() {
        return basis;
    }

    int orders() {
        return orders;
    }

    double before() {
        return before;
    }

    List<Block> blocks() {
        return blocks;
    }

    /**
     * The block that couples two families.
     *
     * @return real and imaginary part, {@code [part][wave * waves + wave]}
     */
    double[][] between(int first, int second) {
        int k = basis.size();
        double[][] out = new double[2][k * k];
        for (Block b : blocks) {
            int r = b.span().length;
            for (int part = 0; part < 2; part++) {
                double[][] c = part == 0 ? b.re() : b.im();
                for (int i = 0; i < k; i++) {
                    double[] row = new double[r];
                    for (int p = 0; p < r; p++) {
                        double left = b.span()[p][first * k + i];
                        for (int q = 0; q < r; q++) {
                            row[q] += left * c[p][q];
                        }
                    }
                    for (int q = 0; q < r; q++) {
                        for (int j = 0; j < k; j++) {
                            out[part][i * k + j] += row[q] * b.span()[q][second * k + j];
                        }
                    }
                }
            }
        }
        return out;
    }

    /** Size of the reflection of the highest order into itself, the larger of cosine and sine for each pair of waves. */
    double[] highestOrder() {
        double[] known = highestOrder.get();
        if (known == null) {
            known = sizeOfHighestOrder();
            highestOrder.set(known);
        }
        return known;
    }

    private double[] sizeOfHighestOrder() {
        double[] out = new double[basis.size() * basis.size()];
        for (int f = Math.max(0, 2 * orders - 1); f <= 2 * orders; f++) {
            double[][] t = between(f, f);
            for (int i = 0; i < out.length; i++) {
                out[i] = Math.max(out[i], Math.hypot(t[0][i], t[1][i]));
            }
        }
        return out;
    }
}
