package eddyreach.engine.assure;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.Wavenumber;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.StandardQuantities;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to change when a target is seen from too near, ranked by gain. Each line is computed with everything together at the rough
 * resolution; what gains little is left out.
 *
 * @param needed false when the surely-on distance is close to that of the standard target, so that nothing need be changed
 * @param changes what helps, the largest gain first; empty when nothing is needed
 * @param otherPrinciple whether a switch that weighs all metals alike is worth a thought: a good conductor that is seen from much
 *     nearer than steel
 */
public record Advice(boolean needed, List<Change> changes, boolean otherPrinciple) {

    /** Surely-on distance, as a share of the standard target's 0.81 s_n, from which on nothing need be changed. */
    public static final double ENOUGH = 0.8;

    /** A change that gains less than this share of the rated distance is left out. */
    public static final double WORTH = 0.03;

    /** No thinner metal is proposed, m: below it is a coating, not a part. */
    private static final double THINNEST = 2e-6;

    private static final double STEEL_THICKNESS = StandardQuantities.TARGET_THICKNESS;

    public Advice {
        changes = List.copyOf(changes);
    }

    /** True when the band leaves too little. */
    static boolean needed(SwitchModel model, Assurance assurance) {
        double assured = new StandardQuantities(model.ratedDistance(), model.faceDiameter()).assured();
        return !(assurance.surelyOn() >= ENOUGH * assured);
    }

    /** Nothing need be changed. */
    static Advice none() {
        return new Advice(false, List.of(), false);
    }

    /**
     * Other switches to try.
     *
     * @param model the switch
     * @param step it at the rough resolution
     */
    private record Alternative(SwitchModel model, ResolutionLadder.Step step) {}

    /** What changes are tried on beside the switch as it is, for all targets of a study. */
    static final class Others {

        private final ResolutionLadder.Step wide;
        private final List<Alternative> alternatives = new ArrayList<>();

        Others(List<SwitchModel> switches, TrialSwitches trials) {
            wide = trials.wide();
            for (SwitchModel m : switches) {
                trials.attempt(m).ifPresent(step -> alternatives.add(new Alternative(m, step)));
            }
        }
    }

    /**
     * Advice for one target.
     *
     * @param setup switch and standard target
     * @param trial the switch to try variants on
     * @param others what else they are tried on
     * @param target the target
     * @param found what was found for it
     * @param omega angular frequency without a target, rad/s
     */
    static Advice of(
            Setup setup, TrialSwitches.Trial trial, Others others, Target target, TargetResult found, double omega) {
        SwitchModel model = setup.switchModel();
        double now = Double.isFinite(found.distance().on()) ? found.distance().on() : 0;
        List<Change> all = new ArrayList<>();
        Material steel = setup.standard().layers().get(0).material();
        Target flag = Variants.made(target, steel, STEEL_THICKNESS);
        if (!flag.actsAs(target)) {
            String words = target.sheet().isPresent()
                    ? steel.name() + " flag, " + length(STEEL_THICKNESS) + ", of the same outline"
                    : "the same part of " + steel.name();
            add(all, Change.Kind.STEEL_FLAG, words, trial.on(flag), now);
        }
        if (target.offset() > 0 && Double.isFinite(target.radius())) {
            add(all, Change.Kind.ON_AXIS, "its axis on that of the switch", trial.on(target.beside(0)), now);
        }
        Variants.closed(target)
                .ifPresent(t -> add(all, Change.Kind.CLOSED_RING, "its slit bridged by metal", trial.on(t), now));
        Target.Outline.Square square = new Target.Outline.Square(model.standardSide());
        if (target.sheet().isPresent() && target.radius() < 0.98 * square.equivalentRadius()) {
            String words = "the size of the standard target, square " + length(square.side());
            add(all, Change.Kind.STANDARD_SIZE, words, trial.on(Variants.outline(target, square)), now);
        }
        Variants.size(target, TrialSwitches.WIDEST)
                .ifPresent(t -> add(
                        all,
                        Change.Kind.LARGER_TARGET,
                        TrialSwitches.WIDEST + " times as wide",
                        on(others.wide, t),
                        now));
        thickness(setup, target, omega).ifPresent(t -> {
            double best = t.layers().get(0).thickness();
            String word = best < target.thickness() ? "thinner: " : "thicker: ";
            String words = word + t.layers().get(0).material().name() + ", about " + length(best)
                    + ", near its best thickness";
            add(all, Change.Kind.THICKNESS, words, trial.on(t), now);
        });
        for (Alternative a : others.alternatives) {
            boolean other = a.model().mounting() == Mounting.NON_FLUSH && model.mounting() == Mounting.FLUSH;
            String words = (other ? "the non-flush switch of this size, " : "the next larger switch, ")
                    + a.model().id() + ", rated " + length(a.model().ratedDistance());
            add(
                    all,
                    other ? Change.Kind.NON_FLUSH_SWITCH : Change.Kind.LARGER_SWITCH,
                    words,
                    on(a.step(), target),
                    now);
        }
        List<Change> ranked = all.stream()
                .filter(c -> c.gain() >= WORTH * model.ratedDistance())
                .sorted(Comparator.comparingDouble(Change::gain).reversed())
                .toList();
        return new Advice(true, ranked, conductor(target) && !(found.factor() >= ENOUGH));
    }

    private static double on(ResolutionLadder.Step step, Target target) {
        return ConductanceCurve.of(step.bench(), target).on(step.trim());
    }

    private static void add(List<Change> all, Change.Kind kind, String text, double on, double now) {
        if (Double.isFinite(on)) {
            all.add(new Change(kind, text, on, on - now));
        }
    }

    private static boolean conductor(Target target) {
        return target.body().materials().stream().anyMatch(m -> m.muReal() == 1 && m.conductivity20() > 1e6);
    }

    /** The thickness k delta^2 at which a sheet takes the most loss, k being the wavenumber that dominates at the rated distance. */
    private static Optional<Target> thickness(Setup setup, Target target, double omega) {
        Optional<Layer> single = Variants.single(target)
                .filter(l -> l.material().muReal() == 1 && l.material().conductivity20() > 0);
        if (single.isEmpty()) {
            return Optional.empty();
        }
        Material m = single.get().material();
        double delta = m.skinDepth(omega, Temperature.AMBIENT);
        double k = Wavenumber.dominant(setup.switchModel(), setup.switchModel().ratedDistance());
        double best =
                new BigDecimal(k * delta * delta).round(new MathContext(1)).doubleValue();
        boolean sheet = best < Explanation.THIN * delta;
        return sheet && best >= THINNEST ? Optional.of(Variants.made(target, m, best)) : Optional.empty();
    }

    private static String length(double metres) {
        return Units.printed(metres, Dimension.LENGTH);
    }
}
