package eddyreach.kinds.mount;

import eddyreach.engine.core.FieldPair;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.stream.Stream;

/**
 * The result of a study of the kind {@code mount}.
 *
 * @param header what the study said of itself
 * @param trimmed the switch without a target in free air, where it is trimmed
 * @param cases what was found, free air first
 * @param rules the trade's usual rules beside it
 * @param fields fields without a target: free air beside each mount, beside a straight edge the walls that it lies between
 * @param warnings limits that concern the whole study
 */
public record MountResult(
        StudyHeader header,
        TrimmedSwitch trimmed,
        List<MountCase> cases,
        List<UsualRule> rules,
        List<FieldPair> fields,
        List<Warning> warnings)
        implements StudyResult {

    public MountResult {
        cases = List.copyOf(cases);
        rules = List.copyOf(rules);
        fields = List.copyOf(fields);
        warnings = List.copyOf(warnings);
    }

    @Override
    public List<Warning> allWarnings() {
        return Stream.concat(warnings.stream(), cases.stream().flatMap(c -> c.warnings().stream()))
                .toList();
    }

    @Override
    public Presentation presentation() {
        return new MountPresentation(this);
    }
}
