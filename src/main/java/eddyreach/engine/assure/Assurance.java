package eddyreach.engine.assure;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The distances up to which the output is assured on, between which it may be on or off, and beyond which it is assured off.
 *
 * <p>Both ends are the worst case of the whole envelope, each computed with everything at its worst at once, never by multiplying
 * factors:
 *
 * <ul>
 *   <li>thresholds: those of a piece that sees the standard target at the least, or at the most, that s_r and s_u allow together (0.81 and
 *       1.21 s_n), and the off threshold with the largest differential travel on top;
 *   <li>the same with winding, core, housing and target at the coldest and at the hottest temperature and the thresholds kept from a trim at
 *       23 C at 0.9 or 1.1 s_n; where this alone would carry the standard target beyond the limits of s_u, the switch is taken to be
 *       compensated just so far that it keeps them, as one that meets the standard is;
 *   <li>the target's conductivity, assumed permeability and the thickness of each of its layers at that end, or at the nominal value, which shortens, or lengthens, the
 *       distance most (near a maximum of the loss both ends may shorten it);
 *   <li>in a mount the same of its metal; thresholds are those set in free air;
 *   <li>the numerical error bar.
 * </ul>
 *
 * <p>The deviations come from the rough resolution and are added to the distances of the fine one. Of the standard target the material is
 * what it is by definition, so that its band is the standard's. Not modelled: drift of the ferrite, the capacitor and the electronics and
 * the influence of the supply, for which the limits of s_u stand.
 *
 * @param assuredOn up to this distance, from contact on, the output is assured on, m; NaN when it is nowhere
 * @param assuredOff beyond this distance it is assured off, m; 0 when it is everywhere, infinite when it is nowhere within the range
 * @param allowances what was allowed for
 * @param contributions what each of them does alone to the on distance
 * @param standardColdest where the uncompensated switch would see the standard target when it is coldest, m; NaN when nowhere or not computed
 * @param standardHottest the same when it is hottest, m; infinite when it would be on without a target, NaN when not computed
 */
public record Assurance(
        double assuredOn,
        double assuredOff,
        Allowances allowances,
        List<Contribution> contributions,
        double standardColdest,
        double standardHottest) {

    /** Working distance as a share of the assured distance, by common practice: from this ... */
    public static final double WORK_LOW = 0.5;

    /** ... up to this. */
    public static final double WORK_HIGH = 0.8;

    public Assurance {
        contributions = List.copyOf(contributions);
    }

    /** What holds in both of two cases: on no farther than in either, off from the farther on. */
    public Assurance worse(Assurance other) {
        List<Contribution> both = IntStream.range(0, contributions.size())
                .mapToObj(i -> contributions.get(i).widened(other.contributions.get(i)))
                .toList();
        return new Assurance(
                anywhereOn() && other.anywhereOn() ? Math.min(assuredOn, other.assuredOn) : Double.NaN,
                Math.max(assuredOff, other.assuredOff),
                allowances,
                both,
                standardColdest,
                standardHottest);
    }

    /** True when there is a distance at which the output is assured on. */
    public boolean anywhereOn() {
        return assuredOn > 0;
    }

    /** Longest working distance to plan with, m; NaN when there is none. */
    public double recommended() {
        return anywhereOn() ? WORK_HIGH * assuredOn : Double.NaN;
    }

    /** Working distance that leaves room for mounting and wear, m; NaN when there is none. */
    public double comfortable() {
        return anywhereOn() ? WORK_LOW * assuredOn : Double.NaN;
    }

    /** What is allowed for. */
    public enum Cause {
        SPREAD,
        OPERATION,
        TEMPERATURE,
        CONDUCTIVITY,
        PERMEABILITY,
        THICKNESS,
        MOUNT_CONDUCTIVITY,
        MOUNT_PERMEABILITY,
        NUMERICAL
    }

    /**
     * One cause alone, everything else nominal.
     *
     * @param cause what
     * @param about which of several, such as the material of a layer; empty where there is one
     * @param shortest shortest on distance, m; NaN when it would not switch on at all
     * @param longest longest on distance, m; NaN when it would not switch on at all, infinite when it would not release
     */
    public record Contribution(Cause cause, String about, double shortest, double longest) {

        /** Of the only one. */
        public Contribution(Cause cause, double shortest, double longest) {
            this(cause, "", shortest, longest);
        }

        /** The same cause in either of two cases. */
        private Contribution widened(Contribution other) {
            return new Contribution(
                    cause,
                    about,
                    Math.min(shortest, other.shortest),
                    Double.isNaN(longest) || other.longest > longest ? other.longest : longest);
        }
    }
}
