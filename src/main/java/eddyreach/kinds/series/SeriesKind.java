package eddyreach.kinds.series;

import eddyreach.study.StudyContext;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyKind;
import java.util.function.Function;

/** Many units of one switch. */
public enum SeriesKind implements StudyKind {
    SERIES;

    @Override
    public String label() {
        return "series";
    }

    @Override
    public double looseness() {
        return CURVES;
    }

    @Override
    public Function<StudyHeader, StudyInput> bind(StudyContext context) {
        return SeriesReader.bind(context);
    }
}
