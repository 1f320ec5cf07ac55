package eddyreach.engine.assure;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.Wavenumber;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why a target switches where it does, at more length than the reason: its regime and how the factor moves with thickness, size and
 * frequency, each computed at the rough resolution (never scaled). The words are in {@code report.words}.
 *
 * @param front the layer that decides; empty when there is none
 * @param frequency frequency without a target, Hz
 * @param steadiness what a tenth of thickness or size does; empty when that is not known
 * @param remedy what the variants suggest
 * @param sensitivities the computed variants
 */
public record Explanation(
        Optional<Front> front,
        double frequency,
        Optional<Steadiness> steadiness,
        Optional<Remedy> remedy,
        List<Sensitivity> sensitivities) {

    /** A factor that moves by less than this with a tenth of thickness or size does not depend on it in practice. */
    public static final double FLAT = 0.02;

    public Explanation {
        sensitivities = List.copyOf(sensitivities);
    }

    /**
     * The layer that decides.
     *
     * @param material its name
     * @param several whether the target has other materials too
     * @param thickness its thickness, of a body where it is thinnest, m
     * @param skinDepth its skin depth, m; infinite if it does not conduct
     * @param regime how it takes its loss
     */
    public record Front(String material, boolean several, double thickness, double skinDepth, Regime regime) {}

    /**
     * By how much the factor moves at most.
     *
     * @param thickness with a tenth of thickness
     * @param size with a tenth of size; NaN if it has none
     */
    public record Steadiness(double thickness, double size) {}

    /** What the variants suggest. */
    public enum Remedy {
        ONLY_METAL,
        THINNER,
        THICKER,
        THICKNESS_NEAR_BEST,
        NO_MORE_METAL
    }

    /**
     * The switch at other frequencies, if it can be trimmed there.
     *
     * @param slower at half the frequency
     * @param faster at twice the frequency
     */
    record Retuned(Optional<ResolutionLadder.Step> slower, Optional<ResolutionLadder.Step> faster) {

        static Retuned of(TrialSwitches trials) {
            return new Retuned(trials.retuned(0.5), trials.retuned(2));
        }
    }

    /**
     * Explains one target.
     *
     * @param setup switch and standard target
     * @param trial the switch to try variants on
     * @param retuned it at other frequencies
     * @param target the target
     * @param result what was found for it
     * @param omega angular frequency without a target, rad/s
     */
    static Explanation of(
            Setup setup, TrialSwitches.Trial trial, Retuned retuned, Target target, TargetResult result, double omega) {
        List<Sensitivity> sensitivities =
                sensitivities(setup.switchModel().effectiveDistance(), trial, retuned, target);
        double wavenumber =
                Wavenumber.dominant(setup.switchModel(), result.budget().distance());
        boolean several = target.body().materials().stream().distinct().count() > 1;
        Optional<Front> front = front(target, omega)
                .map(f -> new Front(
                        f.material().name(),
                        several,
                        f.thickness(),
                        f.material().skinDepth(omega, Temperature.AMBIENT),
                        Regime.of(f, omega, wavenumber)));
        return new Explanation(
                front,
                omega / (2 * Math.PI),
                steadiness(result.factor(), sensitivities),
                front.flatMap(f -> remedy(f.regime(), result.factor(), sensitivities)),
                sensitivities);
    }

    /** The first layer that stops the field; the first that it notices when none does: a plating lets it through to the base. */
    private static Optional<Layer> front(Target target, double omega) {
        if (target.body() instanceof Body.Ball ball) {
            return Optional.of(new Layer(ball.material(), ball.diameter()));
        }
        List<Layer> layers = target.body() instanceof Body.Rings rings
                ? rings.rings().stream()
                        .map(r -> new Layer(r.material(), ReasonFinder.thinnest(r.section())))
                        .toList()
                : target.layers();
        return layers.stream()
                .filter(l -> l.material().hasEffect() && !thin(l, omega))
                .findFirst()
                .or(() -> layers.stream().filter(l -> l.material().hasEffect()).findFirst())
                .or(() -> layers.stream().findFirst());
    }

    private static boolean thin(Layer layer, double omega) {
        Material m = layer.material();
        return m.conductivity20() > 0 && layer.thickness() < Regime.THIN * m.skinDepth(omega, Temperature.AMBIENT);
    }

    private static List<Sensitivity> sensitivities(
            double sr, TrialSwitches.Trial trial, Retuned retuned, Target target) {
        List<Sensitivity> list = new ArrayList<>();
        for (double by : new double[] {0.5, 0.9, 1.1, 2}) {
            Variants.thickness(target, by)
                    .ifPresent(t -> list.add(new Sensitivity(Sensitivity.Quantity.THICKNESS, by, trial.on(t) / sr)));
        }
        for (double by : new double[] {0.9, TrialSwitches.WIDER}) {
            Variants.size(target, by)
                    .ifPresent(t -> list.add(new Sensitivity(Sensitivity.Quantity.SIZE, by, trial.on(t) / sr)));
        }
        retuned.slower()
                .ifPresent(
                        s -> list.add(new Sensitivity(Sensitivity.Quantity.FREQUENCY, 0.5, trial.on(s, target) / sr)));
        retuned.faster()
                .ifPresent(s -> list.add(new Sensitivity(Sensitivity.Quantity.FREQUENCY, 2, trial.on(s, target) / sr)));
        return list;
    }

    private static Optional<Steadiness> steadiness(double factor, List<Sensitivity> list) {
        double thickness = largest(factor, list, Sensitivity.Quantity.THICKNESS);
        return Double.isNaN(thickness)
                ? Optional.empty()
                : Optional.of(new Steadiness(thickness, largest(factor, list, Sensitivity.Quantity.SIZE)));
    }

    /** Largest change with a tenth of a quantity; NaN when there is none or the target does not switch. */
    private static double largest(double factor, List<Sensitivity> list, Sensitivity.Quantity quantity) {
        return list.stream()
                .filter(s -> s.quantity() == quantity && Math.abs(s.by() - 1) < 0.2)
                .mapToDouble(s -> Math.abs(s.factor() - factor))
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
    }

    private static Optional<Remedy> remedy(Regime regime, double factor, List<Sensitivity> list) {
        if (regime == Regime.TRANSPARENT || regime == Regime.DRAWING) {
            return Optional.of(Remedy.ONLY_METAL);
        }
        double halved = thickness(list, 0.5);
        if (regime == Regime.RESISTOR && Double.isNaN(halved)) {
            return Optional.empty();
        }
        double thinner = halved - factor;
        double thicker = thickness(list, 2) - factor;
        if (thinner > FLAT && thinner >= thicker) {
            return Optional.of(Remedy.THINNER);
        }
        if (thicker > FLAT) {
            return Optional.of(Remedy.THICKER);
        }
        return switch (regime) {
            case RESISTOR -> Optional.of(Remedy.THICKNESS_NEAR_BEST);
            case MIRROR -> Optional.of(Remedy.NO_MORE_METAL);
            default -> Optional.empty();
        };
    }

    private static double thickness(List<Sensitivity> list, double by) {
        return list.stream()
                .filter(s -> s.quantity() == Sensitivity.Quantity.THICKNESS && s.by() == by)
                .mapToDouble(Sensitivity::factor)
                .findFirst()
                .orElse(Double.NaN);
    }
}
