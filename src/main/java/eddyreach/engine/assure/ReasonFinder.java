package eddyreach.engine.assure;

import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TargetFields;
import eddyreach.engine.core.Wavenumber;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds why a target switches where it does, from the computed numbers.
 *
 * <p>The yardstick of a thick metal is the loss part of the reflection of a wave of wavenumber k, the one that dominates in the field at
 * the target: the layered-plate reflection of a half-space (Dodd and Deeds 1968) takes {@code 2s / ((s + 1)^2 + 1)} with s = k mu_r delta,
 * at most sqrt(2) - 1 at s = sqrt(2). That of a sheet much thinner than its skin depth is its own best thickness, computed before the
 * switch ({@link BestThickness}). Which material of a target takes the loss comes from the budget.
 */
public final class ReasonFinder {

    private final SolvedSwitch solved;
    private final LossBudget budget;
    private final double omega;
    private final double wavenumber;

    private ReasonFinder(SolvedSwitch solved, LossBudget budget) {
        this.solved = solved;
        this.budget = budget;
        omega = solved.free().omega();
        wavenumber = Wavenumber.dominant(solved.model(), budget.distance());
    }

    /**
     * The reason.
     *
     * @param target the target
     * @param standard the standard target
     * @param distance what was found
     * @param factor its factor
     * @param solved the switch
     * @param budget losses at the distance found
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public static Reason of(
            Target target,
            Target standard,
            SwitchDistance distance,
            double factor,
            SolvedSwitch solved,
            LossBudget budget) {
        double offset = Double.isFinite(target.radius()) ? target.offset() : 0;
        return new Reason(distance.outcome(), factor, offset, new ReasonFinder(solved, budget).cause(target, standard));
    }

    private Reason.Cause cause(Target target, Target standard) {
        if (target.withoutEffect()) {
            return new Reason.NoEffect();
        }
        double clearance = target.offset() - target.radius() - solved.model().faceDiameter() / 2;
        if (clearance > 0) {
            return new Reason.BesideFace(clearance);
        }
        if (target.equals(standard)) {
            return new Reason.Standard(skin(target.front()));
        }
        if (target.body() instanceof Body.Ball ball) {
            return ball.material().conductivity20() == 0
                    ? new Reason.Draws()
                    : new Reason.Ball(ball.diameter(), metal(ball.material()));
        }
        if (target.body() instanceof Body.Rings rings) {
            return rings(target, rings);
        }
        return alone(target).map(l -> single(target, l)).orElseGet(() -> layers(target));
    }

    /** The only layer that matters, if it is in front: a foil on board acts as the foil. */
    private static Optional<Layer> alone(Target target) {
        List<Layer> acting =
                target.layers().stream().filter(l -> l.material().hasEffect()).toList();
        return acting.size() == 1 && target.layers().get(0).equals(acting.get(0))
                ? Optional.of(acting.get(0))
                : Optional.empty();
    }

    private Reason.Cause single(Target target, Layer layer) {
        Material m = layer.material();
        if (m.conductivity20() == 0) {
            return new Reason.Draws();
        }
        double delta = skin(m);
        if (m.muReal() > 1 || layer.thickness() >= Regime.THIN * delta) {
            return new Reason.Thick(metal(m), layer.thickness());
        }
        BestThickness best = BestThickness.of(solved, target, m, budget.distance());
        return new Reason.Resistor(layer.thickness(), delta, best.thickness(), best.share(layer.thickness()));
    }

    private Reason.Cause layers(Target target) {
        Material front = target.front();
        if (front.conductivity20() == 0) {
            return new Reason.Draws();
        }
        double spacing = 0;
        for (Layer l : target.layers()) {
            if (l.material().hasEffect()) {
                break;
            }
            spacing += l.thickness();
        }
        double thickness = target.layers().stream()
                .filter(l -> l.material().equals(front))
                .findFirst()
                .orElseThrow()
                .thickness();
        return new Reason.Layers(spacing, new Reason.Coat(front.name(), thickness, skin(front)), shares(target));
    }

    /** Which material takes which share of the target's loss, the largest first; nothing when there is only one that can. */
    private List<Reason.LossShare> shares(Target target) {
        Map<String, Double> loss = new LinkedHashMap<>();
        List<Part> parts = target.parts();
        boolean budgeted = parts.stream()
                .filter(p -> p.material().hasEffect())
                .allMatch(p -> budget.shares().stream().anyMatch(s -> s.part().equals(p.name())));
        if (!parts.isEmpty() && budgeted) {
            for (Part p : parts) {
                budget.shares().stream()
                        .filter(s -> s.part().equals(p.name()))
                        .forEach(s -> loss.merge(p.material().name(), s.resistance(), Double::sum));
            }
        } else if (target.body() instanceof Body.Sheet) {
            double[] share = TargetFields.plate(target, Temperature.AMBIENT).lossShares(omega, wavenumber);
            for (int i = 0; i < share.length; i++) {
                loss.merge(target.layers().get(i).material().name(), share[i], Double::sum);
            }
        }
        double total = loss.values().stream().mapToDouble(Double::doubleValue).sum();
        List<Reason.LossShare> all = new ArrayList<>();
        loss.forEach((name, value) -> {
            if (value > 0) {
                all.add(new Reason.LossShare(name, value / total));
            }
        });
        all.sort(Comparator.comparingDouble(Reason.LossShare::share).reversed());
        return all.size() < 2 || !(total > 0) ? List.of() : all;
    }

    private Reason.Cause rings(Target target, Body.Rings body) {
        List<Ring> metal = body.rings().stream()
                .filter(r -> r.material().conductivity20() > 0)
                .toList();
        if (metal.isEmpty()) {
            return new Reason.Draws();
        }
        Material front = metal.get(0).material();
        Reason.Coat coat = new Reason.Coat(front.name(), thinnest(metal.get(0).section()), skin(front));
        Material base = !coat.thin()
                ? front
                : metal.stream()
                        .map(Ring::material)
                        .filter(m -> !m.equals(front))
                        .findFirst()
                        .orElse(front);
        double least = metal.stream()
                .filter(r -> r.material().equals(base))
                .mapToDouble(r -> thinnest(r.section()))
                .min()
                .orElse(0);
        return new Reason.Rings(
                metal.stream().anyMatch(Ring::slit),
                metal.stream().allMatch(r -> r.section().r0() > 0),
                base.equals(front) ? Optional.empty() : Optional.of(coat),
                metal(base),
                least,
                shares(target));
    }

    static double thinnest(Section s) {
        return Math.min(s.r0() > 0 ? s.r1() - s.r0() : 2 * s.r1(), s.z1() - s.z0());
    }

    private Reason.Metal metal(Material m) {
        double delta = skin(m);
        return new Reason.Metal(m.name(), m.muReal() > 1, delta, Regime.thickShare(wavenumber * m.muReal() * delta));
    }

    private double skin(Material m) {
        return m.skinDepth(omega, Temperature.AMBIENT);
    }
}
