package eddyreach.kinds.offaxis;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.OffsetRange;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code zone}: where, off the axis and away from the face, targets switch the output.
 *
 * @param header what every study says
 * @param targets the targets, at least one, with different ids
 * @param offsets sideways offsets
 * @param lastDistance largest distance examined, m
 */
public record ZoneInput(StudyHeader header, List<Target> targets, OffsetRange offsets, double lastDistance)
        implements StudyInput {

    public ZoneInput {
        targets = List.copyOf(targets);
    }

    @Override
    public ZoneResult run(Progress progress, Checkpoint checkpoint) {
        return ZoneRunner.run(this, progress);
    }
}
