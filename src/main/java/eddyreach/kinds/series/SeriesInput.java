package eddyreach.kinds.series;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;

/**
 * A study of the kind {@code series}.
 *
 * @param header what every study says
 * @param target the target
 * @param tolerances how far units differ
 * @param units number of units
 * @param seed seed of the random numbers
 * @param share share of the units for which the assured distances hold
 */
record SeriesInput(StudyHeader header, Target target, Tolerances tolerances, int units, long seed, double share)
        implements StudyInput {

    @Override
    public SeriesResult run(Progress progress, Checkpoint checkpoint) {
        return SeriesRunner.run(this, progress);
    }
}
