package eddyreach.kinds.temperature;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code temperature}.
 *
 * @param header what every study says
 * @param targets the targets, at least one, on the axis
 * @param celsius temperatures, degrees Celsius, ascending, with that of the trim among them
 * @param causes what follows the temperature, in the order of {@link Cause}
 * @param drift what the materials do not tell
 */
record TemperatureInput(StudyHeader header, List<Target> targets, List<Double> celsius, List<Cause> causes, Drift drift)
        implements StudyInput {

    TemperatureInput {
        targets = List.copyOf(targets);
        celsius = List.copyOf(celsius);
        causes = List.copyOf(causes);
    }

    @Override
    public TemperatureResult run(Progress progress, Checkpoint checkpoint) {
        return TemperatureRunner.run(this, progress);
    }
}
