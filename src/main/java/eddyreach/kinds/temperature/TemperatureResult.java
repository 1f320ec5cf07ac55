package eddyreach.kinds.temperature;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * The result of a study of the kind {@code temperature}.
 *
 * @param input the study
 * @param trimmed the switch without a target at 23 degrees Celsius
 * @param curves what each target does
 * @param warnings limits that are touched
 */
record TemperatureResult(
        TemperatureInput input, TrimmedSwitch trimmed, List<TemperatureCurve> curves, List<Warning> warnings)
        implements StudyResult {

    TemperatureResult {
        curves = List.copyOf(curves);
        warnings = List.copyOf(warnings);
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new TemperaturePresentation(this);
    }
}
