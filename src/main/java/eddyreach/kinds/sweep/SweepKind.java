package eddyreach.kinds.sweep;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Distances over one or two quantities. */
public enum SweepKind implements StudyKind {
    THICKNESS("thickness"),
    SIZE("size"),
    CONDUCTIVITY("conductivity"),
    LAYERS("layers");

    private final String label;

    SweepKind(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public double looseness() {
        return CURVES;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return SweepReader.bind(this, context);
    }
}
