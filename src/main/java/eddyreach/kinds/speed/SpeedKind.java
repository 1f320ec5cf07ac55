package eddyreach.kinds.speed;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Rows of targets that pass. */
public enum SpeedKind implements StudyKind {
    SPEED;

    @Override
    public String label() {
        return "speed";
    }

    @Override
    public double looseness() {
        return OFF_AXIS;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return SpeedReader.bind(context);
    }
}
