package eddyreach.kinds.hysteresis;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code hysteresis}.
 *
 * @param header what every study says
 * @param targets the targets, at least one, on the axis
 * @param travel differential travel of the standard target as a fraction of s_r
 * @param machine what the machine does
 * @param corner corner frequency of the filter behind the demodulator, Hz
 */
record HysteresisInput(StudyHeader header, List<Target> targets, double travel, Machine machine, double corner)
        implements StudyInput {

    HysteresisInput {
        targets = List.copyOf(targets);
    }

    @Override
    public HysteresisResult run(Progress progress, Checkpoint checkpoint) {
        return HysteresisRunner.run(this, progress);
    }
}
