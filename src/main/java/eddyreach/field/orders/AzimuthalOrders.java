package eddyreach.field.orders;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Media;
import eddyreach.field.axial.ResponsePair;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleFunction;

/**
 * The responses of one side of the gap to waves of azimuthal order 1, 2, ..., each solved when it is first asked for.
 *
 * <p>Any number of threads may ask. None waits for another, since a worker that waits may be handed the very work it waits for: two
 * that ask at the same moment both solve, to the same result.
 */
public final class AzimuthalOrders {

    private final Layout base;
    private final DoubleFunction<CoilRegion> coil;
    private final Band band;
    private final double celsius;
    private final AtomicReference<OrderLayout> layout = new AtomicReference<>();
    private final AtomicReferenceArray<ResponsePair> solved =
            new AtomicReferenceArray<>(FieldAccuracy.HIGHEST_ORDER + 1);

    /**
     * @param base the field problem of order 0
     * @param coil the winding at an angular frequency, or null
     * @param band angular frequencies to cover
     * @param celsius temperature of the parts
     */
    public AzimuthalOrders(Layout base, DoubleFunction<CoilRegion> coil, Band band, double celsius) {
        this.base = base;
        this.coil = coil;
        this.band = band;
        this.celsius = celsius;
    }

    /**
     * The response in potentials: a unit wave J_m(kr) exp(+-kz) of order m comes in, J_m(kr) exp(-+kz) goes out.
     *
     * @param order 1 to {@link FieldAccuracy#HIGHEST_ORDER}
     * @param omega angular frequency, rad/s
     * @return real and imaginary part, row by row, with square roots of the weights
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double[][] response(int order, double omega) {
        ResponsePair pair = solved.get(order);
        if (pair == null) {
            solved.compareAndSet(order, null, solve(order));
            pair = solved.get(order);
        }
        return pair.at(omega);
    }

    private ResponsePair solve(int order) {
        if (base.parts.isEmpty()) {
            double[][][] nothing = new double[2][base.waveCount()][base.waveCount()];
            return new ResponsePair(band, base.basis.w(), nothing, nothing);
        }
        if (layout.get() == null) {
            layout.compareAndSet(null, new OrderLayout(base, band.high(), celsius));
        }
        OrderLoads loads = layout.get().loads(order);
        ForkJoinTask<double[][][]> low =
                ForkJoinTask.adapt(() -> one(loads, order, band.low())).fork();
        double[][][] high = one(loads, order, band.high());
        return new ResponsePair(band, base.basis.w(), low.join(), high);
    }

    private double[][][] one(OrderLoads loads, int order, double omega) {
        CoilRegion winding = coil.apply(omega);
        Media media = Media.of(base.parts, winding == null ? 0 : winding.muLoss(), omega, celsius);
        OrderScatterer s = new OrderScatterer(layout.get(), media, loads, order, omega);
        return new double[][][] {s.re(), s.im()};
    }
}
