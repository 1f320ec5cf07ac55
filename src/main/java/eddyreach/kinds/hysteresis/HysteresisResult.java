package eddyreach.kinds.hysteresis;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * The result of a study of the kind {@code hysteresis}.
 *
 * @param input the study
 * @param trimmed the switch without a target, trimmed with the differential travel of the study
 * @param loops what each target does
 * @param warnings limits that are touched
 */
record HysteresisResult(HysteresisInput input, TrimmedSwitch trimmed, List<Loop> loops, List<Warning> warnings)
        implements StudyResult {

    HysteresisResult {
        loops = List.copyOf(loops);
        warnings = List.copyOf(warnings);
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new HysteresisPresentation(this);
    }
}
