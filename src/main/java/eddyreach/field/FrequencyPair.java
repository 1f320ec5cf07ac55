package eddyreach.field;

import eddyreach.field.Scatterer.Frame;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
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

    /** Solves both frequencies side by side on the mesh made for the higher one. */
    static FrequencyPair solve(
            Frame frame, List<Part> parts, DoubleFunction<CoilRegion> coil, Band band, double celsius) {
        ForkJoinTask<Scatterer> first = ForkJoinTask.adapt(
                        () -> new Scatterer(frame, parts, coil.apply(band.low()), band.low(), celsius))
                .fork();
        Scatterer high = new Scatterer(frame, parts, coil.apply(band.high()), band.high(), celsius);
        return new FrequencyPair(first.join(), high);
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
        double[] w = low.frame().basis().w();
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
        double[] w = low.frame().basis().w();
        double[][] out = new double[2][w.length];
        for (int i = 0; i < w.length; i++) {
            double scale = Math.sqrt(w[i]);
            out[0][i] = scale * mix(low.linkRe()[i], high.linkRe()[i], t);
            out[1][i] = scale * mix(low.linkIm()[i], high.linkIm()[i], t);
        }
        return out;
    }

    Complex impedance(double omega) {
        double t = share(omega);
        return low.impedance().multiply(1 - t).add(high.impedance().multiply(t));
    }

    /** The field for incoming waves (amplitudes times weights) and a coil current, interpolated like the operators. */
    MeshField field(double omega, double[] waveRe, double[] waveIm, double current) {
        double t = share(omega);
        return low.field(waveRe, waveIm, current).mix(1 - t, high.field(waveRe, waveIm, current), t);
    }

    /** Losses of a field by part: the given parts in order, then the winding. */
    List<PartLoss> losses(MeshField field, List<Part> parts, double omega) {
        double t = share(omega);
        // sigma w^2 |A|^2 in w; the media differ between the frequencies only by the factor w and the winding's loss
        Media media = low.media().mix(high.media(), t);
        double[] r = LossIntegrals.byPart(field, low.frame().mesh(), media, parts.size() + 1, omega);
        List<PartLoss> out = new ArrayList<>();
        for (int p = 0; p < parts.size(); p++) {
            out.add(new PartLoss(parts.get(p).name(), parts.get(p).role(), r[p]));
        }
        out.add(new PartLoss("winding", Role.WINDING, r[parts.size()]));
        return out;
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }
}
