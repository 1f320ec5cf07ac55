package eddyreach.engine.core;

import java.util.List;

/**
 * The tolerances and caps that decide how accurate a result is, in one place. Below the engine stand {@link eddyreach.field.axial.Resolution}, which
 * holds meshes, degrees, wavenumbers and frequencies, and {@link eddyreach.field.axial.FieldAccuracy}; the three are listed on the site's page
 * {@code method/accuracy-policy.md}. Whatever is not said to come from a source was chosen by trying: finer, it
 * changed nothing that the error bars show.
 */
public final class AccuracyPolicy {

    // ---- the error bar, chosen on random cases with seeds from 1000 and judged on others (ErrorBarTest)

    /** Stated error bar over the difference of two steps of the ladder. */
    static final double SAFETY = 2.5;

    /** No bar of a distance is smaller than this share of the face's diameter (2 um at M18): two steps may agree by chance. */
    static final double LEAST_BAR = 1e-4;

    /** Share of the impedance's error that is assumed not to cancel against that of the standard target. */
    static final double UNCANCELLED = 0.2;

    // ---- the oscillation

    /** Change of the frequency from one iteration to the next at which it counts as found, relative. */
    static final double FREQUENCY = 1e-7;

    /** Iterations after which no frequency is taken to exist. */
    static final int FREQUENCY_STEPS = 30;

    /** Shift of the frequency by a mount above which its operators are computed at the new frequency, relative. */
    static final double STRAY = 0.03;

    /** Allowed difference of the losses by part from the resistance, relative: more is a failed self-check. */
    static final double BALANCE = 1e-3;

    // ---- sampling of a target's approach

    /** Even intervals in which the approach of a target in a mount or of one of a sweep is sampled: their curves are smooth on this scale. */
    public static final int APPROACH_INTERVALS = 24;

    /** The same where the step only estimates an error bar. */
    public static final int ROUGH_INTERVALS = 12;

    /** Intervals in which a curve that costs nothing to evaluate, being interpolated, is sampled. */
    public static final int CHEAP_INTERVALS = 90;

    /** Nodes of the spline of a target's conductance for bands and advice, closer together near the face. */
    public static final int SPLINE_NODES = 25;

    /** End of that spline in rated distances: beyond 1.43 s_n times the largest factor that a foil can reach. */
    public static final double SPLINE_REACH = 3;

    /**
     * Distance, in rated distances, below which bands leave out azimuthal orders that matter there alone. Of a target and its variants they are
     * a like share, a few per cent of the damping in contact.
     */
    public static final double NEAREST_ORDERS = 0.5;

    /** Chebyshev nodes of the conductance at one offset: the polynomial lies within 1e-4 of the damping at contact, a Newton step squares that. */
    public static final int OFFSET_NODES = 13;

    /** First of these nodes as a share of the range: waves of high order, which matter in contact alone, need not be solved then. */
    public static final double FIRST_OFFSET_NODE = 0.02;

    /** Intervals in which that polynomial is sampled. */
    public static final int OFFSET_INTERVALS = 60;

    /** How closely the edge of a zone is found, as a share of the interval in which it lies. */
    public static final double EDGE = 1e-6;

    /** Step of a slope over offset or distance, in diameters of the face or effective distances. */
    public static final double SLOPE_STEP = 1e-3;

    // ---- curves and maps of many targets

    /** Error of interpolation between computed targets that is accepted, over the accuracy of the study. */
    public static final double INTERPOLATION = 0.15;

    /** Highest step of the ladder that one of hundreds of targets climbs to. */
    public static final int HIGHEST_OF_MANY = ResolutionLadder.FIRST + 1;

    /** Cells of a recess map that are confirmed at the finer step because they lie near a limit, at most. */
    public static final int CONFIRMED_CELLS = 12;

    /** Neighbours on a curve through which the polynomial runs that a distance between computed targets is taken from. */
    public static final int CURVE_NEIGHBOURS = 8;

    /** Neighbours of the polynomials that it is compared with. */
    public static final List<Integer> CURVE_FEWER = List.of(6, 4);

    // ---- mounts

    /** Intervals of the Chebyshev distances at which a target inside a recess is solved first; doubled while they are too few. */
    public static final int DIP_INTERVALS = 3;

    /** The same at most. */
    public static final int MOST_DIP_INTERVALS = 12;

    /** Relative error of the interpolation between them that is accepted; it goes into the bar: about 2 um there. */
    public static final double DIP_TOLERANCE = 4e-3;

    /**
     * What is added to the distance under the logarithm in which they are interpolated, in radii of the core. Discs of 2 to 10 mm radius of five
     * metals before a core of 7 mm, 5 mm deep: wrong by 2e-4 at most with six intervals, and 1e-3 in the distance itself.
     */
    public static final double DIP_SOFT = 0.2;

    /**
     * What the ratio of a ball to its discs changes by inside a recess, over its change above: at most 2.7 for steel down to contact, 0.4 for
     * copper and stainless steel (a ball of 9 mm before an M18 in free air, where the exact ball is known all the way, with 16 discs).
     */
    public static final double BALL_STEPS_BELOW = 3;

    /** By how much a dimension is changed to find its effect, in diameters of the face: enough to stand out from what a new mesh changes. */
    public static final double DIMENSION_CHANGE = 0.015;

    /** Steps of the grid of safe dimensions that are tried when the finer result is less favourable. */
    public static final int SAFE_TRIES = 6;

    // ---- searches

    /** Thicknesses, at even ratios, among which the one of most damping is looked for. */
    public static final int BEST_THICKNESS_POINTS = 61;

    /** The range in which they lie about the estimate of a single wave, as a factor either way. */
    public static final double BEST_THICKNESS_RANGE = 30;

    /** How closely limits of backgrounds and neighbours are found, in diameters of the face. */
    public static final double LIMIT_DISTANCE = 1e-3;

    /** A target before a mount is followed no farther, in the usual range of distances. */
    public static final double MOUNT_FARTHEST = 4;

    /** Ratio of seen to unseen size down to which the smallest target that is seen is searched. */
    public static final double SMALLEST_SIZE = 1.01;

    // ---- neighbours

    /** A shifted switch-on distance is looked for from this share of what it is without a neighbour ... */
    public static final double SHIFT_NEAREST = 0.3;

    /** ... to this multiple. */
    public static final double SHIFT_FARTHEST = 2.2;

    /** How closely it is found, m. */
    public static final double SHIFT_FOUND = 1e-9;

    /** Distances at which it is looked for whether the neighbour alone holds the output on. */
    public static final int NEIGHBOUR_LOOKS = 60;

    /** Distance in core radii up to which computed fields are taken, beyond it dipoles. */
    public static final double NEIGHBOUR_COMPUTED = 12;

    // ---- assured distances

    /** Layers of this many skin depths hold all of the current, whatever their tolerance. */
    public static final double DEEP_LAYER = 8;

    /** Steps of a range of permeabilities in which an extremum is looked for: distances have one at most over it. */
    public static final int PERMEABILITY_STEPS = 6;

    /** Width of what a mount's metal does alone, in rated distances, below which it is left out of the combination. */
    public static final double MOUNT_NEGLIGIBLE = 1e-3;

    private AccuracyPolicy() {}

    /** Discs that stand for a ball inside a recess, by the number of waves: 13, 16, 21, 29 over the ladder. */
    public static int ballDiscs(int waves) {
        return 2 * waves / 3;
    }
}
