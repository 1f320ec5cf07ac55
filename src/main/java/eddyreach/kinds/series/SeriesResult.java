package eddyreach.kinds.series;

import eddyreach.engine.assure.Assurance;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import eddyreach.switching.Spread;
import java.util.List;

/**
 * The result of a study of the kind {@code series}.
 *
 * @param input the study
 * @param trimmed the nominal switch without a target
 * @param nominal distances of the nominal unit
 * @param on on distances of all units, m; 0 for those never on, infinite for those on without a target
 * @param off off distances of all units, m; 0 for those never on, infinite for those that do not release within the range
 * @param shares what each factor has in the variance of the on distance, the largest first
 * @param effectiveInside share of the units whose effective distance on the standard target lies within 0.9 to 1.1 s_n
 * @param worst the band with all of the program's own tolerances at their worst together
 * @param check units of the series that were computed directly
 * @param warnings limits that are touched
 */
record SeriesResult(
        SeriesInput input,
        TrimmedSwitch trimmed,
        SwitchDistance nominal,
        Spread on,
        Spread off,
        List<Share> shares,
        double effectiveInside,
        Assurance worst,
        Check check,
        List<Warning> warnings)
        implements StudyResult {

    SeriesResult {
        shares = List.copyOf(shares);
        warnings = List.copyOf(warnings);
    }

    /**
     * What a factor has in the variance.
     *
     * @param factor the factor
     * @param share first-order share of the variance of the on distance; NaN when the distance is not finite throughout
     */
    record Share(Factor factor, double share) {}

    /**
     * How well units from the model agree with units computed directly.
     *
     * @param units number of units compared
     * @param mean root mean square of the differences of the on distance, m
     * @param worst largest difference, m
     */
    record Check(int units, double mean, double worst) {}

    /** Distance up to which the stated share of the units is on, m, and its interval of 95 %. */
    Spread.Quantile assuredOn() {
        return on.quantile(1 - input.share());
    }

    /** Distance beyond which the stated share of the units is off, m, and its interval of 95 %. */
    Spread.Quantile assuredOff() {
        return off.quantile(input.share());
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new SeriesPresentation(this);
    }
}
