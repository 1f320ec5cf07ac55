package eddyreach.field.axial;

import eddyreach.mesh.MeshMaker.Fineness;
import java.util.List;

/**
 * How finely a field problem is resolved, all in one place. The numerical error of a result is the difference between two
 * resolutions that differ in mesh, degree, domain, wavenumbers and frequencies at once.
 *
 * @param body fineness of the mesh around a switch
 * @param target fineness of the mesh around a target
 * @param waves number of wavenumbers in the gap for targets not much wider than the core
 * @param reach largest wavenumber times the radius of the core
 * @param bandwidth ratio of the frequencies between which operators are interpolated
 * @param fields whether fields and losses will be asked for, which takes the memory of the factors
 */
public record Resolution(Fineness body, Fineness target, int waves, double reach, double bandwidth, boolean fields) {

    /** Covers the shift of the oscillation by a target; interpolation then costs at most 0.15 % of |dZ|. */
    private static final double USUAL_BAND = 1.15;

    /** Radius of a target, in radii of the core, up to which the wavenumbers serve as they are. */
    private static final double RESOLVED = 2;

    /** Radius of a target and its offset together, in radii of the core, up to which they serve. */
    private static final double ACROSS = 3.2;

    /** Radius of the core and offset of a target together, in radii of the core, up to which they serve. */
    private static final double BESIDE = 2.4;

    /** Domain for targets far beside the switch, over the usual one. */
    private static final double REMOTE = 6;

    /** Bound of the azimuthal orders left out at the coarsest step, as a share of |dZ|; it falls with the fifth power of the number of waves. */
    private static final double MOST_CUT = 1e-2;

    /** Ratio of the frequencies at the coarse steps. */
    private static final double WIDE_BAND = 1.2;

    /** Ratio of the frequencies at the step beyond the fine one. */
    private static final double NARROW_BAND = 1.1;

    /** Ratio of the frequencies at the last step. */
    private static final double CLOSE_BAND = 1.06;

    /**
     * For what variants of a target differ by: such differences, added to what a finer step found, were within 0.05 % of the face diameter of
     * those of {@link #FINE}, 0.25 % in contact. The skin is resolved as in {@link #COARSE}, since the loss of good conductors hangs on it.
     */
    public static final Resolution ROUGH = new Resolution(
            new Fineness(3, 0.02, 0.8, 4, 1, 12), new Fineness(3, 0.04, 0.35, 3.5, 0.6, 8), 16, 16, WIDE_BAND, false);

    /** For the error estimate of {@link #FINE}: coarser in every respect. */
    public static final Resolution COARSE = new Resolution(
            new Fineness(3, 0.02, 0.8, 4, 1, 12), new Fineness(3, 0.02, 0.35, 2.5, 0.4, 12), 20, 20, WIDE_BAND, true);

    /** For results. */
    public static final Resolution FINE = new Resolution(
            new Fineness(4, 0.02, 1, 4, 1, 20), new Fineness(4, 0.02, 0.7, 3, 0.3, 20), 24, 24, USUAL_BAND, true);

    /** Each step estimates the error of the one before; the first gives no results. */
    public static final List<Resolution> LADDER = List.of(
            COARSE,
            FINE,
            new Resolution(
                    new Fineness(5, 0.01, 0.8, 3, 0.7, 30),
                    new Fineness(5, 0.01, 0.6, 3, 0.25, 30),
                    32,
                    32,
                    NARROW_BAND,
                    true),
            new Resolution(
                    new Fineness(6, 0.004, 0.6, 3, 0.6, 40),
                    new Fineness(6, 0.004, 0.5, 3, 0.25, 40),
                    44,
                    44,
                    CLOSE_BAND,
                    true));

    /** Share of |dZ| that azimuthal orders left out may have beside the axis: an upper bound, in practice about five times what is left. */
    public double cut() {
        return MOST_CUT * Math.pow((double) COARSE.waves / waves, 5);
    }

    /** The same without fields, at a fraction of the memory. */
    public Resolution withoutFields() {
        return new Resolution(body, target, waves, reach, bandwidth, false);
    }

    /** The same with its outer boundary six times as far away, for fields beside a switch, which die out slowly. */
    public Resolution remote() {
        Fineness wide =
                new Fineness(body.degree(), body.corner(), body.skin(), body.growth(), body.cap(), REMOTE * body.far());
        return new Resolution(wide, target, waves, reach, bandwidth, fields);
    }

    /**
     * The wavenumbers for a core or coil of the given radius and targets up to the given radius: the operator of a disc of radius
     * a has a ridge along k = k' that is about 1/a wide, which the nodes must resolve.
     *
     * @param radius radius of the core, m
     * @param widest largest radius of a bounded target, m
     */
    public WaveBasis waves(double radius, double widest) {
        return waves(radius, widest, 0);
    }

    /**
     * The wavenumbers for bounded targets whose axis is up to some way beside that of the switch: J_n(k offset) must be resolved too, the
     * more so the wider the target. Measured for discs of 0.7 to 4 core radii at offsets up to 3: within 0.1 % of |dZ| from a gap of 1/25
     * radius on.
     *
     * @param radius radius of the core, m
     * @param widest largest radius of a bounded target, m
     * @param offset largest distance between the axes, m
     */
    public WaveBasis waves(double radius, double widest, double offset) {
        return waves(radius, widest, offset, 0);
    }

    /**
     * The same before a switch whose housing reaches further than a few core radii: it answers to a wave as a wide target does.
     *
     * @param radius radius of the core, m
     * @param widest largest radius of a bounded target, m
     * @param offset largest distance between the axes, m
     * @param housing radius up to which the switch itself reflects, m
     */
    public WaveBasis waves(double radius, double widest, double offset, double housing) {
        double factor = Math.max(
                Math.max(1, Math.max(widest, housing) / (RESOLVED * radius)),
                Math.max((widest + offset) / (ACROSS * radius), (radius + offset) / (BESIDE * radius)));
        return WaveBasis.of((int) Math.ceil(waves * factor), reach / radius);
    }

    /** The angular frequencies to cover from the undamped one upwards. */
    public Band band(double omega) {
        return new Band(omega, bandwidth * omega);
    }
}
