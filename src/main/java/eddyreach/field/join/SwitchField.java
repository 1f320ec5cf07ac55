package eddyreach.field.join;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.FrequencyPair;
import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.Solved;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.orders.AzimuthalOrders;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/** The switch's side of the gap: its operator S, the waves s its coil emits and its impedance, over a band of frequencies. */
public final class SwitchField {

    private final WaveBasis basis;
    private final FrequencyPair pair;
    private final AzimuthalOrders orders;

    /**
     * @param parts core, housing and mount, all in z at most 0
     * @param coil the winding at an angular frequency
     * @param basis waves in the gap
     * @param band angular frequencies to cover
     * @param celsius temperature of the parts
     * @param resolution how fine
     * @param scale radius of the core, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public SwitchField(
            List<Part> parts,
            DoubleFunction<CoilRegion> coil,
            WaveBasis basis,
            Band band,
            double celsius,
            Resolution resolution,
            double scale) {
        this(new Prepared(parts, coil, basis, band, celsius, resolution, scale));
    }

    private SwitchField(Prepared p) {
        basis = p.layout.basis;
        pair = FrequencyPair.solve(p.layout, p.coil, p.band, p.celsius, p.resolution.fields());
        orders = new AzimuthalOrders(p.layout, p.coil, p.band, p.celsius);
    }

    /** A switch whose mesh and order of elimination are made, so that the memory is known before anything is solved. */
    public static final class Prepared {

        private final Layout layout;
        private final DoubleFunction<CoilRegion> coil;
        private final Band band;
        private final double celsius;
        private final Resolution resolution;

        /** Takes the arguments of {@link SwitchField}. */
        public Prepared(
                List<Part> parts,
                DoubleFunction<CoilRegion> coil,
                WaveBasis basis,
                Band band,
                double celsius,
                Resolution resolution,
                double scale) {
            layout = new Layout(
                    parts, coil.apply(band.high()), basis, 1, resolution.body(), scale, band.high(), celsius);
            this.coil = coil;
            this.band = band;
            this.celsius = celsius;
            this.resolution = resolution;
        }

        /** Upper bound of the memory for solving both frequencies, bytes. */
        public long memory() {
            return 2
                    * layout.plan.memory(
                            resolution.fields(), Runtime.getRuntime().availableProcessors());
        }

        /**
         * Solves.
         *
         * @throws SelfCheckException if a computation fails its own checks
         * @throws MemoryException if a field problem may not fit into the heap
         */
        public SwitchField solve() {
            return new SwitchField(this);
        }
    }

    /** Impedance without a target, ohm, without the winding's own resistance but with its proximity loss. */
    public Complex impedance(double omega) {
        return pair.impedance(omega);
    }

    /** The waves that couple it to a target. */
    public WaveBasis basis() {
        return basis;
    }

    /** Response with square roots of the weights on both sides, row by row; real then imaginary part. */
    public double[][] response(double omega) {
        return pair.response(omega);
    }

    /** Emitted waves with square roots of the weights; real then imaginary part. */
    public double[][] link(double omega) {
        return pair.link(omega);
    }

    /** The operator at one angular frequency, ready to be joined with targets. */
    public Join at(double omega) {
        return new Join(basis, omega, pair.response(omega), pair.link(omega));
    }

    /** The same in the scratch space of a join of this switch that has served; for one thread. */
    public Join at(double omega, Join served) {
        if (omega != served.omega()) {
            served.tune(omega, pair);
        }
        return served;
    }

    /**
     * The operator at one angular frequency, ready to be joined with targets beside the axis; orders left out count for 0.1 % of
     * |dZ| at most.
     */
    public OffAxisJoin beside(double omega) {
        return beside(omega, FieldAccuracy.ORDERS_LEFT_OUT);
    }

    /**
     * The operator at one angular frequency, ready to be joined with targets beside the axis.
     *
     * @param omega angular frequency, rad/s
     * @param tolerance share of |dZ| that the azimuthal orders left out may have
     */
    public OffAxisJoin beside(double omega, double tolerance) {
        return new OffAxisJoin(basis, omega, pair.response(omega), pair.link(omega), orders, tolerance);
    }

    /** Number of unknowns of the field problem. */
    public int unknowns() {
        return pair.low().unknowns();
    }

    /**
     * Field and losses in front of, inside and behind the switch for one ampere, valid below the target.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Solved solve(double omega, GapState state) {
        return pair.solve(omega, state.returningRe(), state.returningIm(), 1);
    }

    /** Field and losses without a target for one ampere. */
    public Solved solveFree(double omega) {
        return pair.solve(omega, new double[basis.size()], new double[basis.size()], 1);
    }
}
