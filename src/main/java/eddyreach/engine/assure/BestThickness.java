package eddyreach.engine.assure;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.Wavenumber;
import eddyreach.materials.Material;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The thickness at which a wide sheet of a metal damps the tank most at a given distance: computed before the switch, for the estimate
 * k delta^2 of a single wave lies up to half beside it.
 */
final class BestThickness {

    private final SolvedSwitch solved;
    private final Target target;
    private final Material material;
    private final double distance;
    private final double best;
    private final double most;

    private BestThickness(SolvedSwitch solved, Target target, Material material, double distance) {
        this.solved = solved;
        this.target = target;
        this.material = material;
        this.distance = distance;
        double estimate =
                Wavenumber.sheetOptimum(material, solved.free().omega(), Wavenumber.dominant(solved.model(), distance));
        double[] thickness = IntStream.range(0, AccuracyPolicy.BEST_THICKNESS_POINTS)
                .mapToDouble(i -> estimate
                        * Math.pow(
                                AccuracyPolicy.BEST_THICKNESS_RANGE,
                                2.0 * i / (AccuracyPolicy.BEST_THICKNESS_POINTS - 1) - 1))
                .toArray();
        double[] damping = Arrays.stream(thickness).map(this::damping).toArray();
        int top = 0;
        for (int i = 1; i < AccuracyPolicy.BEST_THICKNESS_POINTS; i++) {
            top = damping[i] > damping[top] ? i : top;
        }
        best = thickness[top];
        most = damping[top];
    }

    /**
     * Finds it.
     *
     * @param solved the switch
     * @param target where the sheet is; its outline is taken as endless
     * @param material the metal
     * @param distance distance of the sheet, m
     */
    static BestThickness of(SolvedSwitch solved, Target target, Material material, double distance) {
        return new BestThickness(solved, target, material, distance);
    }

    /** The thickness, m. */
    double thickness() {
        return best;
    }

    /** Damping at a thickness, m, over that at the best. */
    double share(double thickness) {
        return Math.min(1, damping(thickness) / most);
    }

    /** What a sheet adds to the loss conductance of the tank, S; nothing where the tank does not settle. */
    private double damping(double thickness) {
        Target sheet = new Target(
                target.id(), target.label(), new Target.Outline.Endless(), List.of(new Layer(material, thickness)));
        return solved.stateIfAny(solved.effect(solved.target(sheet)), distance)
                .map(s -> s.conductance() - solved.free().conductance())
                .orElse(0.0);
    }
}
