package eddyreach.kinds.approach;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * What the same targets do before several switches.
 *
 * @param each the result of each switch, in the order asked, at least two
 */
public record ComparedResult(List<ApproachResult> each) implements StudyResult {

    public ComparedResult {
        each = List.copyOf(each);
    }

    /** That of the first switch. */
    @Override
    public StudyHeader header() {
        return each.get(0).header();
    }

    /** The first switch. */
    @Override
    public TrimmedSwitch trimmed() {
        return each.get(0).trimmed();
    }

    @Override
    public List<StudyResult> members() {
        return List.copyOf(each);
    }

    @Override
    public List<Warning> switchWarnings() {
        return each.stream().flatMap(r -> r.switchWarnings().stream()).toList();
    }

    @Override
    public List<Warning> warnings() {
        return each.stream().flatMap(r -> r.warnings().stream()).distinct().toList();
    }

    @Override
    public List<Warning> allWarnings() {
        return each.stream().flatMap(r -> r.allWarnings().stream()).distinct().toList();
    }

    @Override
    public Presentation presentation() {
        return new ComparedPresentation(this);
    }
}
