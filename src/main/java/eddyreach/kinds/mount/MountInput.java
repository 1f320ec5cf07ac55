package eddyreach.kinds.mount;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code mount}: one switch in one or more mounts, beside free air.
 *
 * @param header what every study says
 * @param mounts the mounts, at least one, with different ids
 * @param targets the targets that come nearer, at least one, with different ids
 * @param distances distances of the curves; a target that a mount stops earlier begins there
 * @param fieldPictures whether to draw field pictures
 */
public record MountInput(
        StudyHeader header, List<Mount> mounts, List<Target> targets, DistanceRange distances, boolean fieldPictures)
        implements StudyInput {

    public MountInput {
        mounts = List.copyOf(mounts);
        targets = List.copyOf(targets);
    }

    @Override
    public MountInput withoutFieldPictures() {
        return new MountInput(header, mounts, targets, distances, false);
    }

    @Override
    public MountResult run(Progress progress, Checkpoint checkpoint) {
        return MountRunner.run(this, progress);
    }
}
