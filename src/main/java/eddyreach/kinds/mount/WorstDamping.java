package eddyreach.kinds.mount;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TankState;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Mount;
import eddyreach.study.StudyInput;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The damping without a target over temperature and trim.
 *
 * <p>Temperature changes winding, core, housing and mount, not the thresholds. What it changes of the switch's own loss in free air is
 * taken as made up for by the electronics, as it is in most switches, and told beside that as if it were not.
 */
final class WorstDamping {

    /** Temperatures at which the output must still release, degrees Celsius (IEC 60947-5-2, from memory: -25 to 70). */
    private static final double[] TEMPERATURES = {Temperature.AMBIENT, -25, 70};

    /** Effective distances that trimming may leave, in rated distances (IEC 60947-5-2, from memory). */
    private static final double[] TRIMS = {0.9, 1.1};

    private final double free;

    /** The trims beside that of the study, in rated distances, and their thresholds. */
    private final double[] trims;

    private final Trim[] thresholds;

    /** Change of the conductance in free air by each temperature, S. */
    private final double[] drift;

    /**
     * @param study the switch and its standard target
     * @param ladder the switch in free air
     */
    WorstDamping(StudyInput study, ResolutionLadder ladder) {
        SolvedSwitch fresh = ladder.step(ResolutionLadder.FIRST).solved();
        free = fresh.free().conductance();
        var standard = fresh.target(study.standard());
        double sn = study.switchModel().ratedDistance();
        trims = new double[] {study.switchModel().effectiveDistance() / sn, TRIMS[0], TRIMS[1]};
        thresholds = Arrays.stream(trims)
                .mapToObj(trim -> Trim.atFactory(
                        g -> fresh.state(standard, g).conductance(),
                        free,
                        trim * sn,
                        study.switchModel().differentialTravel()))
                .toArray(Trim[]::new);
        // the coarser step serves for what temperature changes
        SolvedSwitch rough = ladder.step(ResolutionLadder.FIRST - 1).solved();
        drift = Arrays.stream(TEMPERATURES)
                .parallel()
                .map(t -> at(rough, t).free().conductance() - rough.free().conductance())
                .toArray();
    }

    /**
     * All corners of a mount, the first at 23 degrees Celsius and the trim of the study.
     *
     * @param solved the switch in the mount
     * @param rough the same at the coarser step
     */
    List<MountCase.Corner> of(SolvedSwitch solved, SolvedSwitch rough, Mount mount) {
        double now =
                without(solved, mount).conductance() - without(rough, mount).conductance();
        double[] mounted = Arrays.stream(TEMPERATURES)
                .parallel()
                .map(t -> without(at(rough, t), mount).conductance() + now)
                .toArray();
        List<MountCase.Corner> corners = new ArrayList<>();
        for (int k = 0; k < trims.length; k++) {
            for (int i = 0; i < TEMPERATURES.length; i++) {
                double bare = mounted[i];
                double made = bare - drift[i];
                corners.add(new MountCase.Corner(
                        TEMPERATURES[i],
                        trims[k],
                        (made - free) / (thresholds[k].on() - free),
                        MountCase.Verdict.of(made, thresholds[k]),
                        (bare - free) / (thresholds[k].on() - free),
                        MountCase.Verdict.of(bare, thresholds[k])));
            }
        }
        return corners;
    }

    private static SolvedSwitch at(SolvedSwitch solved, double celsius) {
        return celsius == Temperature.AMBIENT ? solved : solved.at(celsius);
    }

    /** The tank in a mount without a target, but with the mount's background. */
    static TankState without(SolvedSwitch solved, Mount mount) {
        return mount.background()
                .map(b -> solved.state(solved.target(b.plate().asTarget()), b.distance()))
                .orElse(solved.free());
    }
}
