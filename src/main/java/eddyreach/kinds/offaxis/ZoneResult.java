package eddyreach.kinds.offaxis;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.stream.Stream;

/**
 * The result of a study of the kind {@code zone}.
 *
 * @param header what the study said of itself
 * @param trimmed the switch without a target
 * @param targets the zone of each target
 * @param warnings limits that concern the whole study
 */
public record ZoneResult(StudyHeader header, TrimmedSwitch trimmed, List<ZoneTarget> targets, List<Warning> warnings)
        implements StudyResult {

    public ZoneResult {
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    @Override
    public List<Warning> allWarnings() {
        return Stream.concat(warnings.stream(), targets.stream().flatMap(t -> t.warnings().stream()))
                .toList();
    }

    @Override
    public Presentation presentation() {
        return new ZonePresentation(this);
    }
}
