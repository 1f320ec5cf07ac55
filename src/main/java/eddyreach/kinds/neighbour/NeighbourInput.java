package eddyreach.kinds.neighbour;

import eddyreach.engine.core.Progress;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.DistanceRange;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;

/**
 * A study of the kind {@code neighbour}: two switches near each other.
 *
 * @param header what every study says
 * @param other the other switch; may be the same model
 * @param arrangement how they stand
 * @param targets the targets before the first switch, at least one, with different ids
 * @param spacings face to face the distances between the faces, side by side those between the axes
 * @param tolerance how far the frequency of either switch may be from its nominal one, as a fraction
 * @param alternative frequency of a version of the other switch for use beside the first, over that of the first
 * @param demodulator corner frequency of the filter behind the demodulator, Hz
 */
public record NeighbourInput(
        StudyHeader header,
        SwitchModel other,
        Arrangement arrangement,
        List<Target> targets,
        DistanceRange spacings,
        double tolerance,
        double alternative,
        double demodulator)
        implements StudyInput {

    /** How two switches stand to each other. */
    public enum Arrangement {
        FACE_TO_FACE("face to face"),
        SIDE_BY_SIDE("side by side");

        private final String label;

        Arrangement(String label) {
            this.label = label;
        }

        /** The words used in files and texts. */
        public String label() {
            return label;
        }
    }

    public NeighbourInput {
        targets = List.copyOf(targets);
    }

    /** True when both switches are flush. */
    boolean flush() {
        return switchModel().mounting() == Mounting.FLUSH && other.mounting() == Mounting.FLUSH;
    }

    /** Half the sum of the diameters of the two bodies, m: side by side they touch at that spacing. */
    public static double touching(SwitchModel one, SwitchModel other) {
        return (across(one) + across(other)) / 2;
    }

    private static double across(SwitchModel model) {
        return Math.max(model.bodyDiameter(), model.faceDiameter());
    }

    @Override
    public NeighbourResult run(Progress progress, Checkpoint checkpoint) {
        return NeighbourRunner.run(this, progress);
    }
}
