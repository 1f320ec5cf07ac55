package eddyreach.kinds.neighbour;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Two switches near each other. */
public enum NeighbourKind implements StudyKind {
    NEIGHBOUR("neighbour");

    private final String label;

    NeighbourKind(String label) {
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
        return NeighbourReader.bind(context);
    }
}
