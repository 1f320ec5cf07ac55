package eddyreach.kinds.temperature;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Temperature of switch and target. */
public enum TemperatureKind implements StudyKind {
    TEMPERATURE;

    @Override
    public String label() {
        return "temperature";
    }

    @Override
    public double looseness() {
        return CURVES;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return TemperatureReader.bind(context);
    }
}
