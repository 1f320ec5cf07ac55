package eddyreach.engine.core;

import eddyreach.numerics.SelfCheckException;

/**
 * The switch as its factory trim leaves it, without a target.
 *
 * @param capacitance tank capacitance, F
 * @param undamped the tank without a target
 * @param onConductance tank conductance above which the output switches on, S
 * @param offConductance tank conductance below which it switches off, S
 * @param onAmplitude amplitude at the on threshold, V
 * @param offAmplitude amplitude at the off threshold, V
 * @param freeBudget losses without a target
 */
public record TrimmedSwitch(
        double capacitance,
        Operating undamped,
        double onConductance,
        double offConductance,
        double onAmplitude,
        double offAmplitude,
        LossBudget freeBudget) {

    /**
     * A switch with its thresholds and its fields without a target.
     *
     * @throws SelfCheckException if a computation fails its own checks
     */
    public static TrimmedSwitch of(ResolutionLadder.Step step, WorkingPoint free) {
        SolvedSwitch solved = step.solved();
        TankState s = solved.free();
        var element = solved.model().element();
        return new TrimmedSwitch(
                solved.capacitance(),
                new Operating(
                        s.resistance(),
                        s.inductance(),
                        s.omega() / (2 * Math.PI),
                        s.conductance(),
                        element.amplitude(s.conductance())),
                step.trim().on(),
                step.trim().off(),
                step.trim().onAmplitude(element),
                step.trim().offAmplitude(element),
                Budgets.of(free, null));
    }
}
