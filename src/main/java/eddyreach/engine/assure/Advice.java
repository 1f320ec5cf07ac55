package eddyreach.engine.assure;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.StandardQuantities;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What to change when a target is detected from too near, ranked by gain. Each line is computed with everything together at the rough
 * resolution; what gains little is left out, and so is what nobody can change about the part. The words are in {@code report.words}.
 *
 * @param needed false when the assured distance is close to that of the standard target, so that nothing need be changed
 * @param changes what helps, the largest gain first; empty when nothing is needed
 * @param otherPrinciple whether a switch that weighs all metals alike is worth a thought: a good conductor that is detected from
 *     much nearer than steel
 */
public record Advice(boolean needed, List<Change> changes, boolean otherPrinciple) {

    /** Assured distance, as a share of the standard target's 0.81 s_n, from which on nothing need be changed. */
    public static final double ENOUGH = 0.8;

    /** A change that gains less than this share of the rated distance is left out. */
    public static final double WORTH = 0.03;

    /** No thinner metal is proposed, m: below it is a coating, not a part. */
    private static final double THINNEST = 2e-6;

    /** Thickest metal that counts as a foil, of which another gauge can be had, m (common practice: foil up to 0.2 mm). */
    private static final double FOIL = 0.2e-3;

    /** A sheet narrower than this share of the active face is a chip, whose size nobody chooses. */
    private static final double CHIP = 1.0 / 3;

    private static final double STEEL_THICKNESS = StandardQuantities.TARGET_THICKNESS;

    public Advice {
        changes = List.copyOf(changes);
    }

    /** True when the band leaves too little. */
    static boolean needed(SwitchModel model, Assurance assurance) {
        double assured = new StandardQuantities(model.ratedDistance(), model.faceDiameter()).assured();
        return !(assurance.assuredOn() >= ENOUGH * assured);
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
        return new Finder(setup, trial, others, target, found).find(omega);
    }

    /** Collects what helps one target. */
    private static final class Finder {

        private final SwitchModel model;
        private final Material steel;
        private final TrialSwitches.Trial trial;
        private final Others others;
        private final Target target;
        private final TargetResult found;
        private final double now;
        private final List<Change> all = new ArrayList<>();

        Finder(Setup setup, TrialSwitches.Trial trial, Others others, Target target, TargetResult found) {
            model = setup.switchModel();
            steel = setup.standard().layers().get(0).material();
            this.trial = trial;
            this.others = others;
            this.target = target;
            this.found = found;
            now = Double.isFinite(found.distance().on()) ? found.distance().on() : 0;
        }

        Advice find(double omega) {
            steel();
            if (target.offset() > 0 && Double.isFinite(target.radius())) {
                add(Change.Kind.ON_AXIS, "", Double.NaN, trial.on(target.beside(0)));
            }
            Variants.closed(target).ifPresent(t -> add(Change.Kind.CLOSED_RING, "", Double.NaN, trial.on(t)));
            size();
            thickness(omega);
            for (Alternative a : others.alternatives) {
                boolean other = a.model().mounting() == Mounting.NON_FLUSH && model.mounting() == Mounting.FLUSH;
                add(
                        other ? Change.Kind.NON_FLUSH_SWITCH : Change.Kind.LARGER_SWITCH,
                        a.model().id(),
                        a.model().ratedDistance(),
                        trial.on(a.step(), target));
            }
            List<Change> ranked = all.stream()
                    .filter(c -> c.gain() >= WORTH * model.ratedDistance())
                    .sorted(Comparator.comparingDouble(Change::gain).reversed())
                    .toList();
            return new Advice(true, ranked, conductor(target) && !(found.factor() >= ENOUGH));
        }

        private void steel() {
            Target flag = Variants.made(target, steel, STEEL_THICKNESS);
            if (flag.actsAs(target)) {
                return;
            }
            if (target.sheet().isPresent()) {
                add(Change.Kind.STEEL_FLAG, steel.name(), STEEL_THICKNESS, trial.on(flag));
            } else {
                add(Change.Kind.SAME_PART_OF_STEEL, steel.name(), Double.NaN, trial.on(flag));
            }
        }

        /** Sheets alone can be cut larger; a chip stays what it is. */
        private void size() {
            if (target.sheet().isEmpty() || target.radius() < CHIP * model.faceDiameter() / 2) {
                return;
            }
            Target.Outline.Square square = new Target.Outline.Square(model.standardSide());
            if (target.radius() < 0.98 * square.equivalentRadius()) {
                add(Change.Kind.STANDARD_SIZE, "", square.side(), trial.on(Variants.outline(target, square)));
            }
            Variants.size(target, TrialSwitches.WIDEST)
                    .ifPresent(t -> add(Change.Kind.LARGER_TARGET, "", TrialSwitches.WIDEST, trial.on(others.wide, t)));
        }

        /** Another gauge, of a foil alone: what is thicker has its thickness for a reason. */
        private void thickness(double omega) {
            Optional<Layer> single = Variants.single(target)
                    .filter(l -> l.material().muReal() == 1 && l.material().conductivity20() > 0)
                    .filter(l -> l.thickness() <= FOIL);
            if (single.isEmpty()) {
                return;
            }
            Material m = single.get().material();
            double computed =
                    BestThickness.of(trial.plain().solved(), target, m, now).thickness();
            double best = new BigDecimal(computed).round(new MathContext(1)).doubleValue();
            if (best >= THINNEST && best < Regime.THIN * m.skinDepth(omega, Temperature.AMBIENT)) {
                add(
                        best < target.thickness() ? Change.Kind.THINNER : Change.Kind.THICKER,
                        m.name(),
                        best,
                        trial.on(Variants.made(target, m, best)));
            }
        }

        private void add(Change.Kind kind, String name, double value, double on) {
            if (Double.isFinite(on)) {
                all.add(new Change(kind, name, value, on, on - now));
            }
        }
    }

    private static boolean conductor(Target target) {
        return target.body().materials().stream().anyMatch(m -> m.muReal() == 1 && m.conductivity20() > 1e6);
    }
}
