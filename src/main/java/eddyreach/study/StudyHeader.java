package eddyreach.study;

import eddyreach.engine.core.Setup;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import java.util.List;

/**
 * What every study says, whatever its kind.
 *
 * @param id name of its file without the ending
 * @param name readable name
 * @param note free text
 * @param kind which study
 * @param switchModel the switch
 * @param standard the standard target of this switch
 * @param accuracy largest numerical error of a distance that is accepted, m
 */
public record StudyHeader(
        String id,
        String name,
        String note,
        StudyKind kind,
        SwitchModel switchModel,
        Target standard,
        double accuracy) {

    /** What the engine needs to know. */
    public Setup setup() {
        return new Setup(switchModel, standard, accuracy);
    }

    /** These targets, or the standard target where there are none. */
    public List<Target> orStandard(List<Target> targets) {
        return targets.isEmpty() ? List.of(standard) : targets;
    }
}
