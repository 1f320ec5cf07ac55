package eddyreach.kinds.mount;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** A switch in mounts. */
public enum MountKind implements StudyKind {
    MOUNT("mount");

    private final String label;

    MountKind(String label) {
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
        return MountStudyReader.bind(context);
    }
}
