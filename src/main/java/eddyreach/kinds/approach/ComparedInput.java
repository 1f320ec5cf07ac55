package eddyreach.kinds.approach;

import eddyreach.engine.core.Progress;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * One study of the kinds {@code approach} and {@code materials} before several switches.
 *
 * @param each the same study for each switch, at least two
 */
public record ComparedInput(List<ApproachInput> each) implements StudyInput {

    public ComparedInput {
        each = List.copyOf(each);
    }

    /** That of the first switch. */
    @Override
    public StudyHeader header() {
        return each.get(0).header();
    }

    @Override
    public ComparedResult run(Progress progress, Checkpoint checkpoint) {
        return new ComparedResult(
                each.stream().map(study -> study.run(progress, checkpoint)).toList());
    }

    @Override
    public ComparedInput withoutFieldPictures() {
        return new ComparedInput(
                each.stream().map(ApproachInput::withoutFieldPictures).toList());
    }
}
