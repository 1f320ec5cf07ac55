package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.CurrentPicture;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The result of a study of the kinds {@code approach} and {@code materials}.
 *
 * @param header what the study said of itself
 * @param trimmed the switch without a target
 * @param targets one result per target, the standard target first
 * @param fields field pictures, the one without a target first
 * @param currents eddy currents in the targets
 * @param warnings limits that concern the whole study
 * @param mounted the same targets with the switch in a mount; empty for free air alone
 */
public record ApproachResult(
        StudyHeader header,
        TrimmedSwitch trimmed,
        List<TargetResult> targets,
        List<FieldPicture> fields,
        List<CurrentPicture> currents,
        List<Warning> warnings,
        Optional<InMount> mounted)
        implements StudyResult {

    public ApproachResult {
        targets = List.copyOf(targets);
        fields = List.copyOf(fields);
        currents = List.copyOf(currents);
        warnings = List.copyOf(warnings);
    }

    /** In free air alone. */
    public ApproachResult(
            StudyHeader header,
            TrimmedSwitch trimmed,
            List<TargetResult> targets,
            List<FieldPicture> fields,
            List<CurrentPicture> currents,
            List<Warning> warnings) {
        this(header, trimmed, targets, fields, currents, warnings, Optional.empty());
    }

    @Override
    public List<Warning> allWarnings() {
        return Stream.of(
                        warnings.stream(),
                        targets.stream().flatMap(t -> t.warnings().stream()),
                        mounted.stream().flatMap(m -> m.warnings().stream()))
                .flatMap(s -> s)
                .toList();
    }

    @Override
    public Presentation presentation() {
        return new ApproachPresentation(this);
    }
}
