package eddyreach.study;

import eddyreach.model.ApproachInput;
import eddyreach.model.BackgroundInput;
import eddyreach.model.MountInput;
import eddyreach.model.NeighbourInput;
import eddyreach.model.PassInput;
import eddyreach.model.RecessInput;
import eddyreach.model.StudyInput;
import eddyreach.model.SweepInput;
import eddyreach.model.ZoneInput;

/** Runs studies of all kinds. */
public final class StudyRunner {

    private StudyRunner() {}

    /**
     * Runs a study.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static StudyResult run(StudyInput study) {
        return run(study, Progress.NONE);
    }

    /**
     * Runs a study and tells how far it is.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static StudyResult run(StudyInput study, Progress progress) {
        return run(study, progress, Checkpoint.NONE);
    }

    /**
     * Runs a study and tells how far it is; those that take long can be stopped, and go on from where an earlier run was stopped.
     *
     * @throws ArithmeticException if a computation fails its own checks
     */
    public static StudyResult run(StudyInput study, Progress progress, Checkpoint checkpoint) {
        if (study instanceof RecessInput recess) {
            return RecessRunner.run(recess, progress, checkpoint);
        }
        if (study instanceof ApproachInput approach) {
            return ApproachRunner.run(approach, progress);
        }
        if (study instanceof MountInput mount) {
            return MountRunner.run(mount, progress);
        }
        if (study instanceof BackgroundInput background) {
            return BackgroundRunner.run(background, progress);
        }
        if (study instanceof NeighbourInput neighbour) {
            return NeighbourRunner.run(neighbour, progress);
        }
        if (study instanceof ZoneInput zone) {
            return ZoneRunner.run(zone, progress);
        }
        if (study instanceof PassInput pass) {
            return PassRunner.run(pass, progress);
        }
        if (study instanceof SweepInput.Thickness thickness) {
            return ThicknessRunner.run(thickness, progress);
        }
        if (study instanceof SweepInput.Size size) {
            return SizeRunner.run(size, progress);
        }
        if (study instanceof SweepInput.Conductivity conductivity) {
            return ConductivityRunner.run(conductivity, progress);
        }
        if (study instanceof SweepInput.Coating coating) {
            return CoatingRunner.run(coating, progress);
        }
        throw new IllegalArgumentException("no runner for a study of the kind " + study.kind());
    }
}
