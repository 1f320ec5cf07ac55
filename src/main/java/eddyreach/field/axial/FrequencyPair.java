package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/**
 * The same scatterer at two frequencies, with everything in between by linear interpolation in the frequency: the oscillator
 * follows the inductance by a few per cent, over which the operators are smooth. Linear in w is exact for a sheet that acts as
 * a resistor; a skin-limited wall, whose loss has terms in w^(1/2) and w^(-1/2), costs up to 0.15 % of |dZ| in the middle of
 * a pair 15 % apart.
 */
public final class FrequencyPair {

    private final Scatterer low;
    private final Scatterer high;
    private final Band band;
    private final ResponsePair response;

    private FrequencyPair(Scatterer low, Scatterer high) {
        this.low = low;
        this.high = high;
        band = new Band(low.omega(), high.omega());
        response = new ResponsePair(band, low.layout().basis.w(), matrix(low), matrix(high));
    }

    private static double[][][] matrix(Scatterer s) {
        return new double[][][] {s.responseRe(), s.responseIm()};
    }

    /**
     * Solves both frequencies side by side on one layout.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public static FrequencyPair solve(
            Layout layout, DoubleFunction<CoilRegion> coil, Band band, double celsius, boolean fields) {
        ForkJoinTask<Scatterer> first = ForkJoinTask.adapt(
                        () -> one(layout, coil.apply(band.low()), band.low(), celsius, fields))
                .fork();
        Scatterer high = one(layout, coil.apply(band.high()), band.high(), celsius, fields);
        return new FrequencyPair(first.join(), high);
    }

    private static Scatterer one(Layout layout, CoilRegion coil, double omega, double celsius, boolean fields) {
        Media media = Media.of(layout.parts, coil == null ? 0 : coil.muLoss(), omega, celsius);
        return new Scatterer(layout, media, coil, omega, fields);
    }

    public Scatterer low() {
        return low;
    }

    private double share(double omega) {
        return ResponsePair.share(band, omega);
    }

    /** Response matrix times square roots of the weights on both sides, row by row; real then imaginary part. */
    public double[][] response(double omega) {
        return response.at(omega);
    }

    /** The same into given arrays. */
    public void response(double omega, double[][] out) {
        response.at(omega, out);
    }

    /** Emitted waves times square roots of the weights; real then imaginary part. */
    public double[][] link(double omega) {
        double t = share(omega);
        double[] w = low.layout().basis.w();
        double[][] out = {
            ResponsePair.mix(low.linkRe(), high.linkRe(), t), ResponsePair.mix(low.linkIm(), high.linkIm(), t)
        };
        for (int i = 0; i < w.length; i++) {
            double scale = Math.sqrt(w[i]);
            out[0][i] *= scale;
            out[1][i] *= scale;
        }
        return out;
    }

    /** Z / w is interpolated, like S and s, so that the losses below add up to it. */
    public Complex impedance(double omega) {
        double t = share(omega);
        return low.impedance()
                .multiply((1 - t) * omega / low.omega())
                .add(high.impedance().multiply(t * omega / high.omega()));
    }

    /**
     * Field and losses for incoming waves (amplitudes times weights) and a coil current. Losses are interpolated as the operators are,
     * per angular frequency and for the same waves at both ends: so they sum exactly to the resistance.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Solved solve(double omega, double[] waveRe, double[] waveIm, double current) {
        double t = share(omega);
        MeshField first = low.field(waveRe, waveIm, current);
        MeshField second = high.field(waveRe, waveIm, current);
        double[] lossLow = LossIntegrals.byPart(first, low.layout(), low.media(), low.omega());
        double[] lossHigh = LossIntegrals.byPart(second, low.layout(), high.media(), high.omega());
        List<PartLoss> losses = new ArrayList<>();
        for (int p = 0; p < lossLow.length; p++) {
            Part part = low.layout().parts.get(p);
            double loss = omega * ((1 - t) * lossLow[p] / low.omega() + t * lossHigh[p] / high.omega());
            losses.add(new PartLoss(part.name(), part.role(), loss));
        }
        return new Solved(first.mix(1 - t, second, t), losses);
    }
}
