package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.UnworkableException;
import java.util.function.DoubleFunction;

/**
 * What a switch evaluates of its tank: one positive number that rises when a target that it is meant to see comes nearer, so that {@link Trim} and
 * {@link SwitchPointFinder}, which are told in conductances, serve all principles with the signal in place of the conductance.
 *
 * <p>"Free" is the switch in free air at its trim; a mount changes the state, not what the switch compares it with.
 */
public interface Principle {

    /** The signal. */
    double signal(TankState state);

    /** What the signal is, for the sentence that a failed trim is told in ({@link NoTrimException}). */
    String name();

    /** Unit of the signal; empty for a pure number. */
    default String unit() {
        return "";
    }

    /**
     * Factory trim on the standard target, as {@link Trim#atFactory} has it for the loss.
     *
     * @param standard the tank over the distance of the standard target, m
     * @param effectiveDistance effective operating distance s_r, m
     * @param differentialTravel differential travel H as a fraction of s_r
     * @throws UnworkableException when the signal does not fall from s_r to s_r (1 + H), or the differential travel exceeds s_r
     */
    default Trim trim(DoubleFunction<TankState> standard, double effectiveDistance, double differentialTravel) {
        return Trim.ofSignal(name(), g -> signal(standard.apply(g)), effectiveDistance, differentialTravel);
    }

    /** Loss: the tank's conductance. */
    record Loss() implements Principle {
        @Override
        public String name() {
            return "the loss conductance";
        }

        @Override
        public double signal(TankState state) {
            return state.conductance();
        }

        @Override
        public String unit() {
            return "S";
        }
    }

    /**
     * Inductance, counted as the frequency of the oscillation, whichever way it goes: the larger of f/f0 and f0/f. Strong loss also lowers the frequency, to second order.
     *
     * @param free the tank in free air
     */
    record Inductance(TankState free) implements Principle {
        @Override
        public String name() {
            return "the deviation of the frequency";
        }

        @Override
        public double signal(TankState state) {
            double ratio = state.frequency() / free.frequency();
            return Math.max(ratio, 1 / ratio);
        }
    }

    /**
     * Ferrous-selective: the rise of the inductance, L/L0, which good conductors lower.
     *
     * @param free the tank in free air
     */
    record FerrousSelective(TankState free) implements Principle {
        @Override
        public String name() {
            return "the inductance";
        }

        @Override
        public double signal(TankState state) {
            return state.inductance() / free.inductance();
        }
    }

    /**
     * Non-ferrous-selective: the fall of the inductance, L0/L. Steel lowers it too where its skin effect outweighs its permeability: the frequency decides.
     *
     * @param free the tank in free air
     */
    record NonFerrousSelective(TankState free) implements Principle {
        @Override
        public String name() {
            return "the reciprocal inductance";
        }

        @Override
        public double signal(TankState state) {
            return free.inductance() / state.inductance();
        }
    }

    /**
     * Weighted sum of loss and inductance, {@code w G/G0 + (1 - w) L0/L}.
     *
     * @param free the tank in free air
     * @param weight weight w of the loss, 0 to 1
     */
    record WeightedSum(TankState free, double weight) implements Principle {

        public WeightedSum {
            UnworkableException.require("weight of the loss", weight, "", 0, 1);
            Require.positive("conductance in free air", free.conductance(), "S");
        }

        @Override
        public String name() {
            return "the weighted sum of loss and inductance";
        }

        @Override
        public double signal(TankState state) {
            return weight * state.conductance() / free.conductance()
                    + (1 - weight) * free.inductance() / state.inductance();
        }
    }
}
