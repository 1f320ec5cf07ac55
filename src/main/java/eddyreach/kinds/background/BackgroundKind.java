package eddyreach.kinds.background;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Metal behind the target. */
public enum BackgroundKind implements StudyKind {
    BACKGROUND("background");

    private final String label;

    BackgroundKind(String label) {
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
        return BackgroundReader.bind(context);
    }
}
