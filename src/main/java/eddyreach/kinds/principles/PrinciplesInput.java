package eddyreach.kinds.principles;

import eddyreach.engine.core.Progress;
import eddyreach.materials.Material;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code principles}.
 *
 * @param header what every study says
 * @param targets the targets, on the axis, with different ids
 * @param alike ids of those that the weighted sum is to detect at one distance
 * @param reference material of the standard square on which the non-ferrous-selective switch is trimmed
 */
record PrinciplesInput(StudyHeader header, List<Target> targets, List<String> alike, Material reference)
        implements StudyInput {

    PrinciplesInput {
        targets = List.copyOf(targets);
        alike = List.copyOf(alike);
    }

    @Override
    public PrinciplesResult run(Progress progress, Checkpoint checkpoint) {
        return PrinciplesRunner.run(this, progress);
    }
}
