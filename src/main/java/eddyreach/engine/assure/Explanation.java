package eddyreach.engine.assure;

import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.Wavenumber;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.units.Dimension;
import eddyreach.units.Numbers;
import eddyreach.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Why a target switches where it does, at more length than the one sentence of the reason: sentences made from computed numbers, and how
 * the factor moves with thickness, size and frequency, each computed at the rough resolution (never scaled).
 *
 * @param sentences the text, sentence by sentence
 * @param sensitivities the computed variants
 */
public record Explanation(List<String> sentences, List<Sensitivity> sensitivities) {

    /** Below this thickness in skin depths the current is nearly even through a sheet, and its resistance decides. */
    static final double THIN = 0.5;

    /** A factor that moves by less than this with a tenth of thickness or size does not depend on it in practice. */
    private static final double FLAT = 0.02;

    public Explanation {
        sentences = List.copyOf(sentences);
        sensitivities = List.copyOf(sensitivities);
    }

    /** How the target takes its loss. */
    enum Regime {
        /** Neither conducts nor is magnetic. */
        TRANSPARENT,
        /** Magnetic without conducting. */
        DRAWING,
        /** Thinner than its skin: its resistance decides. */
        SHEET,
        /** Thick against its skin, which is thin against the field: near a mirror. */
        MIRROR,
        /** Not magnetic and as thick as its skin or so, which is wide enough to lose a fair part. */
        LOSSY,
        /** Magnetic and conducting: a thin skin of high loss. */
        MAGNETIC
    }

    /**
     * The regime of a layer.
     *
     * @param omega angular frequency, rad/s
     * @param wavenumber wavenumber that dominates at the target, 1/m
     */
    static Regime regime(Layer front, double omega, double wavenumber) {
        Material m = front.material();
        if (!m.hasEffect()) {
            return Regime.TRANSPARENT;
        }
        if (m.conductivity20() == 0) {
            return Regime.DRAWING;
        }
        if (m.muReal() > 1) {
            return Regime.MAGNETIC;
        }
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        if (front.thickness() < THIN * delta) {
            return Regime.SHEET;
        }
        return Reason.thickShare(wavenumber * delta) < Reason.LITTLE ? Regime.MIRROR : Regime.LOSSY;
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
        List<String> sentences = new ArrayList<>();
        Optional<Layer> front = front(target, omega);
        double shown = result.budget().distance();
        double wavenumber = Wavenumber.dominant(setup.switchModel(), shown);
        front.ifPresent(f -> {
            skin(target, f, omega).ifPresent(sentences::add);
            sentences.add(sentence(regime(f, omega, wavenumber)));
        });
        sentences.add(losses(result.budget()));
        steadiness(result.factor(), sensitivities).ifPresent(sentences::add);
        front.flatMap(f -> remedy(regime(f, omega, wavenumber), result.factor(), sensitivities))
                .ifPresent(sentences::add);
        return new Explanation(sentences, sensitivities);
    }

    /** The first layer that stops the field; the first that it notices when none does: a plating lets it through to the base. */
    private static Optional<Layer> front(Target target, double omega) {
        if (target.body() instanceof Body.Ball ball) {
            return Optional.of(new Layer(ball.material(), ball.diameter()));
        }
        List<Layer> layers = target.body() instanceof Body.Rings rings
                ? rings.rings().stream()
                        .map(r -> new Layer(r.material(), Reason.thinnest(r.section())))
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
        return m.conductivity20() > 0 && layer.thickness() < THIN * m.skinDepth(omega, Temperature.AMBIENT);
    }

    private static Optional<String> skin(Target target, Layer front, double omega) {
        Material m = front.material();
        if (m.conductivity20() == 0) {
            return Optional.empty();
        }
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        String layer = target.body().materials().stream().distinct().count() > 1 ? "its " + m.name() : "the part";
        return Optional.of(String.format(
                Locale.ROOT,
                "At %s the skin depth of %s is %s; %s is %s thick at its thinnest, %s skin depths.",
                Units.text(round(omega / (2 * Math.PI), 3), Dimension.FREQUENCY),
                m.name(),
                length(delta),
                layer,
                length(front.thickness()),
                number(front.thickness() / delta)));
    }

    private static String sentence(Regime regime) {
        return switch (regime) {
            case TRANSPARENT -> "It neither conducts nor is magnetic, so the field passes through it as through air.";
            case DRAWING ->
                "It draws the field without conducting: the inductance rises, hardly any loss is added, and this kind of switch"
                        + " weighs loss.";
            case SHEET ->
                "So it is a resistance-limited sheet: the current is even through its thickness, and its loss is largest where its"
                        + " resistance matches the reactance of the loop that it makes for the field; thinner metal carries too little"
                        + " current, thicker metal too strong a current with too little resistance.";
            case MIRROR ->
                "So it is skin-limited and acts almost as a mirror: strong currents in a thin skin throw the field back with little"
                        + " loss, and this kind of switch weighs loss.";
            case LOSSY ->
                "Its skin is not thin against the field: the currents are weaker than in a good conductor and lose more.";
            case MAGNETIC ->
                "It is magnetic: the field is drawn into a thin skin of high resistance, where even moderate currents lose much.";
        };
    }

    private static String losses(LossBudget budget) {
        double total = budget.total();
        Set<String> groups = budget.shares().stream()
                .map(LossBudget.Share::group)
                .collect(Collectors.toCollection(LinkedHashSet::new));
        String shares = groups.stream()
                .filter(g -> Math.abs(budget.of(g)) >= 0.005 * total)
                .map(g -> String.format(Locale.ROOT, "%s %.0f %%", g, 100 * budget.of(g) / total))
                .collect(Collectors.joining(", "));
        return String.format(
                Locale.ROOT, "With it at %.2f mm the loss is shared so: %s.", budget.distance() * 1e3, shares);
    }

    private static List<Sensitivity> sensitivities(
            double sr, TrialSwitches.Trial trial, Retuned retuned, Target target) {
        List<Sensitivity> list = new ArrayList<>();
        record Factor(String words, double value) {}
        for (Factor f : List.of(
                new Factor("thickness halved", 0.5),
                new Factor("thickness 10 % less", 0.9),
                new Factor("thickness 10 % more", 1.1),
                new Factor("thickness doubled", 2))) {
            Variants.thickness(target, f.value())
                    .ifPresent(t -> list.add(new Sensitivity(f.words(), trial.on(t) / sr)));
        }
        for (Factor f : List.of(new Factor("size 10 % less", 0.9), new Factor("size 10 % more", TrialSwitches.WIDER))) {
            Variants.size(target, f.value()).ifPresent(t -> list.add(new Sensitivity(f.words(), trial.on(t) / sr)));
        }
        retuned.slower()
                .ifPresent(s -> list.add(new Sensitivity("frequency halved, trimmed anew", on(s, target) / sr)));
        retuned.faster()
                .ifPresent(s -> list.add(new Sensitivity("frequency doubled, trimmed anew", on(s, target) / sr)));
        return list;
    }

    private static double on(ResolutionLadder.Step step, Target target) {
        return ConductanceCurve.of(step.bench(), target).on(step.trim());
    }

    /** What a tenth of thickness or size does. */
    private static Optional<String> steadiness(double factor, List<Sensitivity> list) {
        if (!Double.isFinite(factor)) {
            return Optional.empty();
        }
        double thickness = largest(factor, list, "thickness 10");
        double size = largest(factor, list, "size 10");
        if (Double.isNaN(thickness)) {
            return Optional.empty();
        }
        String first = thickness < FLAT
                ? "A tenth more or less of thickness hardly moves the factor"
                : String.format(Locale.ROOT, "A tenth of thickness moves the factor by up to %.2f", thickness);
        String second = Double.isNaN(size)
                ? ""
                : size < FLAT
                        ? ", nor does a tenth of size"
                        : String.format(Locale.ROOT, ", a tenth of size by up to %.2f", size);
        return Optional.of(
                first + (thickness >= FLAT && !Double.isNaN(size) && size < FLAT ? ", a tenth of size hardly" : second)
                        + ".");
    }

    private static double largest(double factor, List<Sensitivity> list, String start) {
        return list.stream()
                .filter(s -> s.change().startsWith(start))
                .mapToDouble(s -> Math.abs(s.factor() - factor))
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
    }

    /** What to do, from the computed variants. */
    private static Optional<String> remedy(Regime regime, double factor, List<Sensitivity> list) {
        if (regime == Regime.TRANSPARENT || regime == Regime.DRAWING) {
            return Optional.of("Only metal helps: a steel flag on the part.");
        }
        double best = factor(list, "thickness halved");
        if (regime == Regime.SHEET && Double.isNaN(best)) {
            return Optional.empty();
        }
        double thinner = best - factor;
        double thicker = factor(list, "thickness doubled") - factor;
        if (thinner > FLAT && thinner >= thicker) {
            return Optional.of("Thinner would be seen from farther.");
        }
        if (thicker > FLAT) {
            return Optional.of("Thicker would be seen from farther.");
        }
        return switch (regime) {
            case SHEET -> Optional.of("Its thickness is near the best.");
            case MIRROR ->
                Optional.of(
                        "More of the same metal does not help; a flag of steel, or a foil of the metal far thinner than its skin"
                                + " depth, does.");
            default -> Optional.empty();
        };
    }

    private static double factor(List<Sensitivity> list, String change) {
        return list.stream()
                .filter(s -> s.change().equals(change))
                .mapToDouble(Sensitivity::factor)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static String length(double metres) {
        return Units.printed(round(metres, 2), Dimension.LENGTH);
    }

    private static String number(double value) {
        return Numbers.significant(value, 2);
    }

    private static double round(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits)).doubleValue();
    }
}
