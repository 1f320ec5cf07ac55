package eddyreach.study;

import eddyreach.field.PartLoss;
import eddyreach.geometry.Role;
import java.util.ArrayList;
import java.util.List;

/** Makes loss budgets from field solutions. */
final class Budgets {

    private Budgets() {}

    /**
     * Losses of a situation by part.
     *
     * @param at the solved fields
     * @param target name of the target, null without one
     */
    static LossBudget of(Situation at, String target) {
        Bench bench = at.bench();
        List<PartLoss> losses = at.before().losses();
        double beside = bench.windingBesideField(at.omega());
        List<LossBudget.Share> shares = new ArrayList<>();
        double proximity = losses.stream()
                .filter(p -> p.role() == Role.WINDING)
                .mapToDouble(PartLoss::resistance)
                .sum();
        shares.add(new LossBudget.Share(Role.WINDING.label(), "winding", proximity + beside));
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
            shares.add(
                    new LossBudget.Share(Role.TARGET.label(), target, at.state().resistance() - beside - others));
        }
        return new LossBudget(at.distance(), shares);
    }

    private static LossBudget.Share share(PartLoss p) {
        return new LossBudget.Share(p.role().label(), p.name(), p.resistance());
    }
}
