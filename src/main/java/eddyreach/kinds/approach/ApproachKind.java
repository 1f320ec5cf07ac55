package eddyreach.kinds.approach;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Targets that come nearer: each with all that can be said of it, or many materials compared. */
public enum ApproachKind implements StudyKind {
    APPROACH("approach"),
    MATERIALS("materials");

    private final String label;

    ApproachKind(String label) {
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
    public Optional<Function<List<StudyInput>, StudyInput>> comparison() {
        return Optional.of(all ->
                new ComparedInput(all.stream().map(ApproachInput.class::cast).toList()));
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return ApproachReader.bind(this, context);
    }
}
