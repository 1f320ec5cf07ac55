package eddyreach.kinds.speed;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import eddyreach.switching.PulseTrain;
import eddyreach.switching.SpeedLimit;
import java.util.List;
import java.util.Optional;

/**
 * The result of a study of the kind {@code speed}.
 *
 * @param input the study
 * @param trimmed the switch without a target
 * @param amplitude amplitude at rest over one pitch at even positions, V; with a tooth before the face first and last
 * @param limit how fast the row may pass
 * @param error numerical error bar of the highest frequency, Hz; NaN when there is none
 * @param beyond the pulses well above the limit, where there is one
 * @param asked the pulses at the speed asked for
 * @param sudden times for a tooth that comes and goes at once; empty when it is not detected at rest
 * @param startUp time from power-on to a valid output without a target, s
 * @param warnings limits that are touched
 */
record SpeedResult(
        SpeedInput input,
        TrimmedSwitch trimmed,
        double[] amplitude,
        SpeedLimit limit,
        double error,
        Optional<PulseTrain> beyond,
        Optional<PulseTrain> asked,
        Optional<Sudden> sudden,
        double startUp,
        List<Warning> warnings)
        implements StudyResult {

    SpeedResult {
        warnings = List.copyOf(warnings);
    }

    /**
     * Times of the output for a sudden tooth.
     *
     * @param on from its coming, s
     * @param off from its going, s
     */
    record Sudden(double on, double off) {}

    /** Highest frequency, Hz; 0 when no speed gives clean pulses, infinite when each does. */
    double frequency() {
        if (limit instanceof SpeedLimit.Limited limited) {
            return limited.frequency();
        }
        return limit instanceof SpeedLimit.Unlimited ? Double.POSITIVE_INFINITY : 0;
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new SpeedPresentation(this);
    }
}
