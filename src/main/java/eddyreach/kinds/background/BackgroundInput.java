package eddyreach.kinds.background;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code background}: metal behind the target, at one distance after the other.
 *
 * @param header what every study says
 * @param mount what holds the switch; free air unless given
 * @param background the metal behind the target
 * @param targets the targets, at least one, with different ids
 * @param distances distances of the background from the active face
 */
public record BackgroundInput(
        StudyHeader header, Mount mount, Mount.Background background, List<Target> targets, DistanceRange distances)
        implements StudyInput {

    public BackgroundInput {
        targets = List.copyOf(targets);
    }

    @Override
    public BackgroundResult run(Progress progress, Checkpoint checkpoint) {
        return BackgroundRunner.run(this, progress);
    }
}
