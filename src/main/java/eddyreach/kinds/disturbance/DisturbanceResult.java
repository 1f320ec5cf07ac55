package eddyreach.kinds.disturbance;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.oscillator.AlternatingField;
import eddyreach.oscillator.CoreSaturation;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;

/**
 * The result of a study of the kind {@code disturbance}.
 *
 * @param input the study
 * @param trimmed the switch without a target
 * @param linkage flux linkage of coil and core per flux density of an even field along the axis, m2
 * @param error numerical error bar of that, m2
 * @param free the effect while there is no target, on the way to the on threshold
 * @param on the effect at the on distance of the standard target, on the way back to the off threshold
 * @param core the core's margin; empty for a coil without one
 * @param sweep largest harmless flux density over the frequency
 * @param warnings limits that are touched
 */
record DisturbanceResult(
        DisturbanceInput input,
        TrimmedSwitch trimmed,
        double linkage,
        double error,
        AlternatingField.Effect free,
        AlternatingField.Effect on,
        Optional<CoreSaturation> core,
        List<Harmless> sweep,
        List<Warning> warnings)
        implements StudyResult {

    DisturbanceResult {
        sweep = List.copyOf(sweep);
        warnings = List.copyOf(warnings);
    }

    /**
     * What is harmless at one frequency.
     *
     * @param frequency frequency, Hz
     * @param free largest flux density that does not turn the output on without a target, T
     * @param on largest flux density that does not turn it off at the on distance, T
     */
    record Harmless(double frequency, double free, double on) {}

    /** Whether the output may change by what the field adds to the oscillation. */
    boolean mayDisturb() {
        return free.mayDisturb() || on.mayDisturb();
    }

    /** Whether the field saturates the core. */
    boolean saturates() {
        return core.filter(c -> c.margin(input.field().fluxDensity()) < 1).isPresent();
    }

    /** Largest flux density, T, at which neither happens. */
    double largest() {
        double coil = Math.min(free.largestFluxDensity(), on.largestFluxDensity());
        return core.map(c -> Math.min(coil, c.largestExternal())).orElse(coil);
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new DisturbancePresentation(this);
    }
}
