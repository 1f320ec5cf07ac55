package eddyreach.kinds.disturbance;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Fields from outside. */
public enum DisturbanceKind implements StudyKind {
    DISTURBANCE;

    @Override
    public String label() {
        return "disturbance";
    }

    @Override
    public double looseness() {
        return SINGLE;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return DisturbanceReader.bind(context);
    }
}
