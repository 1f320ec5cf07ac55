package eddyreach.kinds.principles;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** What a switch evaluates of its tank. */
public enum PrinciplesKind implements StudyKind {
    PRINCIPLES;

    @Override
    public String label() {
        return "principles";
    }

    @Override
    public double looseness() {
        return CURVES;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return PrinciplesReader.bind(context);
    }
}
