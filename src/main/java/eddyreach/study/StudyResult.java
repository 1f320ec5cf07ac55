package eddyreach.study;

import eddyreach.engine.core.Operating;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.model.values.SwitchModel;
import java.util.List;

/** The complete, immutable result of a study: everything that tables, charts and pages need. */
public interface StudyResult {

    /** What the study said of itself. */
    StudyHeader header();

    /** The switch without a target. */
    TrimmedSwitch trimmed();

    /** How it is shown. */
    Presentation presentation();

    /** The results of single switches of which this one is made: itself where there is one switch. */
    default List<StudyResult> members() {
        return List.of(this);
    }

    /** True when the run was stopped before its end. */
    default boolean partial() {
        return false;
    }

    /** What makes the switch itself doubtful: it is told before any answer. */
    default List<Warning> switchWarnings() {
        return ValidityLimits.ofSwitch(model(), trimmed());
    }

    /** Limits that concern the whole study. */
    List<Warning> warnings();

    /** These and those that concern single results. */
    default List<Warning> allWarnings() {
        return warnings();
    }

    /** Name of the study file without its ending. */
    default String id() {
        return header().id();
    }

    /** Readable name. */
    default String name() {
        return header().name();
    }

    /** What the study is about, as its file says. */
    default String note() {
        return header().note();
    }

    /** Which question was asked. */
    default StudyKind kind() {
        return header().kind();
    }

    /** The switch. */
    default SwitchModel model() {
        return header().switchModel();
    }

    /** The tank without a target. */
    default Operating undamped() {
        return trimmed().undamped();
    }
}
