package eddyreach.kinds.background;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.kinds.mount.MountCase;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * The result of a study of the kind {@code background}.
 *
 * @param header what the study said of itself
 * @param trimmed the switch without a target in free air, where it is trimmed
 * @param mount what holds the switch
 * @param background the metal behind the target
 * @param distance distances of the background from the active face, m, ascending
 * @param amplitude amplitude with the background alone, V peak
 * @param reserve share of the reserve that the background alone takes up, as in {@link MountCase.Reserve}
 * @param alone where the background itself switches the output on and where it lets it go, as if it were a target
 * @param targets what happens to the targets
 * @param usualFront the usual free zone in front, three rated distances, m
 * @param warnings limits that concern the study
 */
public record BackgroundResult(
        StudyHeader header,
        TrimmedSwitch trimmed,
        Mount mount,
        Mount.Background background,
        double[] distance,
        double[] amplitude,
        double[] reserve,
        SwitchDistance alone,
        List<Series> targets,
        double usualFront,
        List<Warning> warnings)
        implements StudyResult {

    public BackgroundResult {
        targets = List.copyOf(targets);
        warnings = List.copyOf(warnings);
    }

    /**
     * One target before the background.
     *
     * @param target the target
     * @param free where it switches without a background
     * @param behind where it switches with the background at each distance; not possible where there is no room for it
     * @param tenth distance of the background from which on it moves the switch-on distance by no more than 10 % of s_r and the output
     *     releases, m
     * @param hundredth the same for 1 %
     * @param tenthRoom room between the part's back and the background where the output goes off, at the former distance, m
     * @param hundredthRoom the same at the latter
     * @param tolerance what both may be wrong by, m: the intervals between the distances are halved until they are that short
     */
    public record Series(
            Target target,
            SwitchDistance free,
            List<SwitchDistance> behind,
            double tenth,
            double hundredth,
            double tenthRoom,
            double hundredthRoom,
            double tolerance) {

        public Series {
            behind = List.copyOf(behind);
        }
    }

    @Override
    public Presentation presentation() {
        return new BackgroundPresentation(this);
    }
}
