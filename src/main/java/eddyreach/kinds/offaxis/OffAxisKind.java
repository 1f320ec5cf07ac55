package eddyreach.kinds.offaxis;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Targets off the axis. */
public enum OffAxisKind implements StudyKind {
    ZONE("zone"),
    PASS("pass");

    private final String label;

    OffAxisKind(String label) {
        this.label = label;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public double looseness() {
        return OFF_AXIS;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return this == ZONE ? OffAxisReader.zone(context) : OffAxisReader.pass(context);
    }
}
