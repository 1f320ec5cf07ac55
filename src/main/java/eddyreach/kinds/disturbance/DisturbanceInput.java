package eddyreach.kinds.disturbance;

import eddyreach.engine.core.Progress;
import eddyreach.oscillator.AlternatingField;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;

/**
 * A study of the kind {@code disturbance}.
 *
 * @param header what every study says
 * @param field the field at the switch
 * @param source the current that makes it; empty text when the field is given
 * @param saturation flux density at which the core counts as saturated, T
 */
record DisturbanceInput(StudyHeader header, AlternatingField field, String source, double saturation)
        implements StudyInput {

    @Override
    public DisturbanceResult run(Progress progress, Checkpoint checkpoint) {
        return DisturbanceRunner.run(this, progress);
    }
}
