package eddyreach.engine.assure;

import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.field.axial.Resolution;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The switch, the same one at other frequencies and other switches, all at the rough resolution and trimmed each on its own standard target,
 * to try variants of targets on.
 */
final class TrialSwitches {

    /** Widest variant of a target, as a factor of its size. */
    static final double WIDEST = 1.5;

    /** Widest variant that explains, as a factor. */
    static final double WIDER = 1.1;

    private final Setup setup;
    private final List<Target> targets;
    private final ResolutionLadder.Step plain;

    /**
     * @param setup the switch
     * @param targets the targets of which variants will be tried
     */
    TrialSwitches(Setup setup, List<Target> targets) {
        this.setup = setup;
        this.targets = targets;
        plain = step(setup.switchModel(), WIDER);
    }

    /** The same coil with another capacitor. */
    private static SwitchModel atFrequency(SwitchModel m, double factor) {
        return new SwitchModel(
                m.id(),
                m.name(),
                m.note(),
                m.mounting(),
                m.ratedDistance(),
                m.effectiveDistance(),
                m.faceDiameter(),
                factor * m.frequency(),
                m.winding(),
                m.parts(),
                m.element(),
                m.differentialTravel(),
                m.output(),
                m.thread());
    }

    /** The switch as it is. */
    ResolutionLadder.Step plain() {
        return plain;
    }

    /** For targets {@value #WIDEST} times as wide: more waves where their width asks for them. */
    ResolutionLadder.Step wide() {
        return step(setup.switchModel(), WIDEST);
    }

    /** At a multiple of the frequency, if it can be trimmed there. */
    Optional<ResolutionLadder.Step> retuned(double factor) {
        return attempt(atFrequency(setup.switchModel(), factor));
    }

    /** Another switch with its own standard target; empty when it cannot be trimmed or does not oscillate, for then it is no alternative. */
    Optional<ResolutionLadder.Step> attempt(SwitchModel model) {
        try {
            return Optional.of(step(model, WIDER));
        } catch (NoTrimException | NoOscillationException e) {
            return Optional.empty();
        }
    }

    private ResolutionLadder.Step step(SwitchModel model, double widest) {
        Target standard = standard(setup.standard(), model);
        List<Target> all = new ArrayList<>(targets);
        targets.forEach(t -> Variants.size(t, widest).ifPresent(all::add));
        all.add(standard);
        return ResolutionLadder.trimmed(model, standard, Resolution.ROUGH, all, bytes -> {});
    }

    /** The standard target of a switch, of the steel of another's. */
    static Target standard(Target other, SwitchModel model) {
        return Variants.outline(other, new Target.Outline.Square(model.standardSide()));
    }

    /** A target as it is before the switch as it is. */
    ConductanceCurve curve(Target target) {
        return new ConductanceCurve(plain.solved(), plain.field(target));
    }

    /**
     * Tries variants of one target.
     *
     * @param distance what was found for it at the fine resolution
     * @param nominal it as it is
     * @param step is run after each variant
     */
    Trial of(SwitchDistance distance, ConductanceCurve nominal, Runnable step) {
        return new Trial(plain, distance, nominal.on(plain.trim()), step);
    }

    /**
     * Variants of one target.
     *
     * @param plain the switch as it is
     * @param fine what was found for the target at the fine resolution
     * @param nominal its on distance at the rough resolution, m
     * @param step is run after each variant
     */
    record Trial(ResolutionLadder.Step plain, SwitchDistance fine, double nominal, Runnable step) {

        /** On distance of a variant, m: the difference at the rough resolution added to what was found; NaN when it does not switch on. */
        double on(Target variant) {
            double on = on(plain, variant);
            return Double.isFinite(fine.on()) && Double.isFinite(nominal) ? Math.max(0, fine.on() + on - nominal) : on;
        }

        /** On distance of a variant before another switch, at the rough resolution, m; NaN when it does not switch on. */
        double on(ResolutionLadder.Step before, Target variant) {
            double on = ConductanceCurve.of(before.solved(), variant).on(before.trim());
            step.run();
            return on;
        }
    }
}
