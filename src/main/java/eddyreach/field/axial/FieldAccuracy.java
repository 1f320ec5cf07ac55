package eddyreach.field.axial;

/**
 * The tolerances and caps of the field packages that decide how accurate a result is: with {@link Resolution}, which holds meshes, degrees, wavenumbers
 * and frequencies, all there is to turn below the engine, whose own numbers stand in {@code engine.core.AccuracyPolicy}.
 */
public final class FieldAccuracy {

    // ---- self-checks

    /** Rounding and quadrature of nearly lossless parts, relative to the largest diagonal entry after scaling. */
    public static final double PASSIVITY = 1e-8;

    /** Largest residual relative to the terms it is the sum of; the factorisation reaches 1e-13. */
    public static final double RESIDUAL = 1e-9;

    /** Responses below this, of small bodies in high azimuthal orders, have lost their digits. */
    public static final double UNDERFLOW = 1e-250;

    // ---- loads and losses on the mesh

    /** Gauss points of losses beyond the degree: the factor r and the waves are no polynomials of that degree. */
    public static final int LOSS_POINTS = 3;

    /** Points beyond the degree in cells beside a cone: their map is bilinear, and neither 1/r nor its inverse is a polynomial. */
    public static final int SLANTED_POINTS = 4;

    /** Depth behind the coil from which a mount counts as far, relative to the scale. */
    public static final double FAR_BEHIND = 2;

    /** Distance below which an element end counts as the face itself, in radii of the core. */
    public static final double SAME_PLACE = 1e-6;

    // ---- azimuthal orders

    /** Highest order: waves of higher ones lose their digits in the smallest wavenumbers. */
    public static final int HIGHEST_ORDER = 30;

    /** Share of a wave's energy within the parts that may be missed: a hundredth of a per cent of its field. */
    public static final double MISSED_ENERGY = 1e-8;

    /** Numbers of picked waves are multiples of this, so that many orders share one plan of elimination. */
    public static final int PICKED_WAVES = 4;

    /**
     * Least (size / skin depth)^2, relative to the permeability's own effect mu_r - 1, from which a part is taken as a conductor: the
     * flux that the currents of a poor conductor expel is a quarter to an eighth of it, so that 1e-4 is far below all other errors. A
     * non-magnetic part is a conductor however poor it is: it has no other effect.
     */
    public static final double CONDUCTOR = 1e-4;

    /** Relative permeability from which a part scatters strongly. */
    public static final double STRONG_SCATTERER = 2;

    // ---- the join of switch and target

    /** Wavenumber nodes from which the limit of the far field is extrapolated: small enough for a line through them ... */
    public static final int NEAR_NODE = 1;

    /** ... and large enough to be resolved by the mesh. */
    public static final int FAR_NODE = 3;

    /** Usual bound of the orders left out as a share of |dZ|: they prove to count for a fifth of it, as little as the mesh. */
    public static final double ORDERS_LEFT_OUT = 1e-3;

    /** Where the target hardly acts any more, its effect on the axis at the same distance times this takes the place of |dZ|. */
    public static final double FAINT = 2e-2;

    /**
     * Residual at which the waves between a switch and a target beside its axis, or a part that is not round, count as solved; dZ is
     * quadratic in it but for the last step.
     */
    public static final double WAVES_SOLVED = 1e-7;

    /** Orders of the target that are always taken in: order 0, with its ring currents, says little about the others. */
    public static final int LEAST_ORDERS = 2;

    /** Length of the first panel of the integral between two switches side by side, in core radii; panels double in length away from face and axis ... */
    public static final double FIRST_PANEL = 0.25;

    /** ... up to this distance: the tail beyond, of the order of h/L cubed, is below 1e-5. */
    public static final double LAST_PANEL = 60;

    private FieldAccuracy() {}
}
