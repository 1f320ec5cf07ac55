package eddyreach.engine.core;

import eddyreach.field.axial.PartLoss;
import eddyreach.field.join.PlacedTarget;
import eddyreach.geometry.Role;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Makes loss budgets from field solutions. */
public final class Budgets {

    private Budgets() {}

    /**
     * Losses by part.
     *
     * @param at the solved fields
     * @param target name of the target, null without one
     * @throws SelfCheckException if a computation fails its own checks
     */
    public static LossBudget of(WorkingPoint at, String target) {
        SolvedSwitch solved = at.solved();
        List<PartLoss> losses = at.before().losses();
        double beside = solved.windingBesideField(at.omega());
        List<LossBudget.Share> shares = new ArrayList<>();
        double proximity = losses.stream()
                .filter(p -> p.role() == Role.WINDING)
                .mapToDouble(PartLoss::resistance)
                .sum();
        shares.add(new LossBudget.Share(Role.WINDING, "winding", proximity + beside));
        for (PartLoss p : losses) {
            if (p.role() != Role.WINDING) {
                shares.add(share(p));
            }
        }
        if (at.behind().isPresent()) {
            at.behind().get().losses().forEach(p -> shares.add(share(p)));
        } else if (target != null) {
            // an endless plate has no mesh: its loss is what the other parts leave of the resistance
            double others = losses.stream().mapToDouble(PartLoss::resistance).sum();
            shares.add(new LossBudget.Share(Role.TARGET, target, at.state().resistance() - beside - others));
        }
        LossBudget budget = new LossBudget(at.distance(), shares);
        balanced(budget, at.state());
        return budget;
    }

    /**
     * Losses with a target beside the axis, where fields are not computed part by part: what the switch loses without it, and the rest, which
     * is the target's with what it changes in the switch.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static LossBudget beside(SolvedSwitch solved, PlacedTarget target, double distance, String name) {
        TankState state = solved.state(target, distance);
        List<LossBudget.Share> shares =
                new ArrayList<>(of(WorkingPoint.free(solved), null).shares());
        double free = shares.stream().mapToDouble(LossBudget.Share::resistance).sum();
        shares.add(new LossBudget.Share(Role.TARGET, name, true, state.resistance() - free));
        return new LossBudget(distance, shares);
    }

    /** What the parts lose must be what the coil feels. */
    private static void balanced(LossBudget budget, TankState state) {
        double gap = Math.abs(budget.total() / state.resistance() - 1);
        if (!(gap <= AccuracyPolicy.BALANCE)) {
            throw new SelfCheckException(String.format(
                    Locale.ROOT,
                    "the losses of the parts sum to %.6g ohm but the coil's resistance is %.6g ohm at a distance of %.4g mm: the energy does"
                            + " not balance",
                    budget.total(),
                    state.resistance(),
                    budget.distance() * 1e3));
        }
    }

    private static LossBudget.Share share(PartLoss p) {
        return new LossBudget.Share(p.role(), p.name(), p.resistance());
    }
}
