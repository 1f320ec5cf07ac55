package eddyreach.kinds.recess;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Maps over the dimensions of a recess. */
public enum RecessKind implements StudyKind {
    RECESS("recess");

    private final String label;

    RecessKind(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public double looseness() {
        return SINGLE;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return RecessReader.bind(context);
    }
}
