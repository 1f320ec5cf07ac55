package eddyreach.kinds.speed;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;

/**
 * A study of the kind {@code speed}.
 *
 * @param header what every study says
 * @param tooth one target of the row
 * @param distance distance at which they pass, m
 * @param wheel how they are arranged
 * @param corner corner frequency of the filter behind the demodulator, Hz
 * @param delay delay of the output, s
 * @param noise amplitude from which the oscillation starts, V
 * @param shortest shortest time for which a clean pulse is on, and off, s
 */
record SpeedInput(
        StudyHeader header,
        Target tooth,
        double distance,
        Wheel wheel,
        double corner,
        double delay,
        double noise,
        double shortest)
        implements StudyInput {

    /** Time constant of the demodulator, s. */
    double timeConstant() {
        return 1 / (2 * Math.PI * corner);
    }

    @Override
    public SpeedResult run(Progress progress, Checkpoint checkpoint) {
        return SpeedRunner.run(this, progress);
    }
}
