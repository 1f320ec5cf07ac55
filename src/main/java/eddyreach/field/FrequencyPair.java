package eddyreach.field;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/**
 * The same scatterer at two frequencies, with everything in between by linear interpolation in the frequency: the oscillator
 * follows the inductance by a few per cent, over which the operators are smooth. A term that grows with the square root of the
 * frequency is off by less than (f1/f0 - 1)^2 / 32 in between, 0.07 % for a pair 15 % apart.
 */
final class FrequencyPair {

    private final Scatterer low;
    private final Scatterer high;

    private FrequencyPair(Scatterer low, Scatterer high) {
        this.low = low;
        this.high = high;
    }

    /** Solves both frequencies side by side on one layout. */
    static FrequencyPair solve(Layout layout, DoubleFunction<CoilRegion> coil, Band band, double celsius) {
        ForkJoinTask<Scatterer> first = ForkJoinTask.adapt(
                        () -> one(layout, coil.apply(band.low()), band.low(), celsius))
                .fork();
        Scatterer high = one(layout, coil.apply(band.high()), band.high(), celsius);
        return new FrequencyPair(first.join(), high);
    }

    private static Scatterer one(Layout layout, CoilRegion coil, double omega, double celsius) {
        Media media = Media.of(layout.parts, coil == null ? 0 : coil.muLoss(), omega, celsius);
        return new Scatterer(layout, media, coil, omega);
    }

    Scatterer low() {
        return low;
    }

    private double share(double omega) {
        return (omega - low.omega()) / (high.omega() - low.omega());
    }

    /** Response matrix times square roots of the weights on both sides, row by row; real then imaginary part. */
    double[][] response(double omega) {
        double t = share(omega);
        double[] w = low.layout().basis.w();
        int n = w.length;
        double[][] out = new double[2][n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double scale = Math.sqrt(w[i] * w[j]);
                out[0][i * n + j] = scale * mix(low.responseRe()[i][j], high.responseRe()[i][j], t);
                out[1][i * n + j] = scale * mix(low.responseIm()[i][j], high.responseIm()[i][j], t);
            }
        }
        return out;
    }

    /** Emitted waves times square roots of the weights; real then imaginary part. */
    double[][] link(double omega) {
        double t = share(omega);
        double[] w = low.layout().basis.w();
        double[][] out = new double[2][w.length];
        for (int i = 0; i < w.length; i++) {
            double scale = Math.sqrt(w[i]);
            out[0][i] = scale * mix(low.linkRe()[i], high.linkRe()[i], t);
            out[1][i] = scale * mix(low.linkIm()[i], high.linkIm()[i], t);
        }
        return out;
    }

    /**
     * The coil's impedance. Its resistance is interpolated as a w^2 + b sqrt(w), the laws of the winding's proximity loss and
     * of losses in a skin: linearly, the proximity loss would come out 0.5 % too large within a pair 15 % apart.
     */
    Complex impedance(double omega) {
        double t = share(omega);
        double f = omega / low.omega();
        double f1 = high.omega() / low.omega();
        double s = (Math.pow(f, 1.5) - 1) / (Math.pow(f1, 1.5) - 1);
        double resistance =
                Math.sqrt(f) * mix(low.impedance().getReal(), high.impedance().getReal() / Math.sqrt(f1), s);
        return new Complex(
                resistance, mix(low.impedance().getImaginary(), high.impedance().getImaginary(), t));
    }

    /** The field for incoming waves (amplitudes times weights) and a coil current, interpolated like the operators. */
    MeshField field(double omega, double[] waveRe, double[] waveIm, double current) {
        double t = share(omega);
        return low.field(waveRe, waveIm, current).mix(1 - t, high.field(waveRe, waveIm, current), t);
    }

    /** Losses of a field by part, in the order of the layout. */
    List<PartLoss> losses(MeshField field, double omega) {
        Media media = low.media().mix(high.media(), share(omega));
        double[] r = LossIntegrals.byPart(field, low.layout(), media, omega);
        List<PartLoss> out = new ArrayList<>();
        for (int p = 0; p < r.length; p++) {
            out.add(new PartLoss(
                    low.layout().parts.get(p).name(), low.layout().parts.get(p).role(), r[p]));
        }
        return out;
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }
}
