package eddyreach.studies;

import eddyreach.kinds.approach.ApproachKind;
import eddyreach.kinds.background.BackgroundKind;
import eddyreach.kinds.disturbance.DisturbanceKind;
import eddyreach.kinds.hysteresis.HysteresisKind;
import eddyreach.kinds.mount.MountKind;
import eddyreach.kinds.neighbour.NeighbourKind;
import eddyreach.kinds.offaxis.OffAxisKind;
import eddyreach.kinds.principles.PrinciplesKind;
import eddyreach.kinds.recess.RecessKind;
import eddyreach.kinds.series.SeriesKind;
import eddyreach.kinds.speed.SpeedKind;
import eddyreach.kinds.sweep.SweepKind;
import eddyreach.kinds.temperature.TemperatureKind;
import eddyreach.study.StudyKind;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The registry: all kinds of study there are, in the order in which they are listed. */
public final class StudyKinds {

    private static final List<StudyKind> ALL = Stream.<StudyKind[]>of(
                    ApproachKind.values(),
                    MountKind.values(),
                    BackgroundKind.values(),
                    NeighbourKind.values(),
                    RecessKind.values(),
                    SweepKind.values(),
                    OffAxisKind.values(),
                    SpeedKind.values(),
                    TemperatureKind.values(),
                    SeriesKind.values(),
                    HysteresisKind.values(),
                    DisturbanceKind.values(),
                    PrinciplesKind.values())
            .flatMap(Arrays::stream)
            .toList();

    private StudyKinds() {}

    /** All of them. */
    public static List<StudyKind> all() {
        return ALL;
    }
}
