package eddyreach.kinds.hysteresis;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Differential travel as a question of design. */
public enum HysteresisKind implements StudyKind {
    HYSTERESIS;

    @Override
    public String label() {
        return "hysteresis";
    }

    @Override
    public double looseness() {
        return CURVES;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return HysteresisReader.bind(context);
    }
}
