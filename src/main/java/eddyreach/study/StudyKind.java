package eddyreach.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A kind of study: the word that names it in files, and how its own keys are read. The registry is {@code studies.StudyKinds}. */
public interface StudyKind {

    /** Largest accepted error of a distance unless a study says otherwise, over that of a single distance on the axis: that same error. */
    double SINGLE = 1;

    /** A curve of many distances: 0.04 mm at M18. */
    double CURVES = 2;

    /** Distances off the axis: 0.1 mm at M18. */
    double OFF_AXIS = 5;

    /** The word used in files and tables. */
    String label();

    /** Error of a distance that is accepted unless a study says otherwise, over that of a single distance on the axis. */
    double looseness();

    /** Makes one study of the same for several switches; empty where a study is of one switch. */
    default Optional<Function<List<StudyInput>, StudyInput>> comparison() {
        return Optional.empty();
    }

    /**
     * Binds what is particular to the kind; what comes out makes the study once nothing is wrong.
     *
     * @param context the file and what it may name; problems go there
     */
    Function<StudyHeader, StudyInput> bind(StudyContext context);
}
