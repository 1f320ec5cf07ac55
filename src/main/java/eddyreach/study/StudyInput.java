package eddyreach.study;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.Setup;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.Optional;
import java.util.function.Predicate;

/** What a study asks for, in SI units. */
public interface StudyInput {

    /** What every study says. */
    StudyHeader header();

    /**
     * Computes it.
     *
     * @param progress is told how far it is
     * @param checkpoint lets it stop early and go on, if it is {@link #resumable}
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    StudyResult run(Progress progress, Checkpoint checkpoint);

    /**
     * Computes it and tells nobody how far it is.
     *
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    default StudyResult run() {
        return run(Progress.NONE, Checkpoint.NONE);
    }

    /** For a study that may take long: tells whether a line kept by an earlier run can be read. Empty for those that run in one go. */
    default Optional<Predicate<String>> resumable() {
        return Optional.empty();
    }

    /** The same study without field pictures, where it has any. */
    default StudyInput withoutFieldPictures() {
        return this;
    }

    /** Name of its file without the ending. */
    default String id() {
        return header().id();
    }

    /** Readable name. */
    default String name() {
        return header().name();
    }

    /** Which study. */
    default StudyKind kind() {
        return header().kind();
    }

    /** What the engine needs to know of it. */
    default Setup setup() {
        return header().setup();
    }

    /** The switch. */
    default SwitchModel switchModel() {
        return header().switchModel();
    }

    /** The standard target of the switch. */
    default Target standard() {
        return header().standard();
    }

    /** Largest numerical error of a distance that is accepted, m. */
    default double accuracy() {
        return header().accuracy();
    }

    /** Numerical error of a distance that is accepted unless a study says otherwise: 0.02 mm at M18, in proportion to the size; m. */
    static double defaultAccuracy(SwitchModel model) {
        return 0.02e-3 * model.faceDiameter() / 18e-3;
    }

    /** End of the range of distances unless a study says otherwise, m. */
    static double defaultReach(SwitchModel model) {
        return 2.5 * model.ratedDistance();
    }
}
