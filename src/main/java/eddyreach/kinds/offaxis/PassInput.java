package eddyreach.kinds.offaxis;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.OffsetRange;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code pass}: targets that slide past the face at one distance.
 *
 * @param header what every study says
 * @param targets the targets, at least one, with different ids
 * @param distance distance at which they pass, m
 * @param offsets sideways offsets of one half of the way
 */
public record PassInput(StudyHeader header, List<Target> targets, double distance, OffsetRange offsets)
        implements StudyInput {

    public PassInput {
        targets = List.copyOf(targets);
    }

    @Override
    public PassResult run(Progress progress, Checkpoint checkpoint) {
        return PassRunner.run(this, progress);
    }
}
