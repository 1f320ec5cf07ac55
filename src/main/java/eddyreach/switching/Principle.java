package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.UnworkableException;

/**
 * What a switch evaluates of its tank: one positive number that rises when a target that it is meant to see comes nearer, so that {@link Trim} and
 * {@link SwitchPointFinder}, which are told in conductances, serve all principles with the signal in place of the conductance.
 *
 * <p>"Free" is the switch in free air at its trim; a mount changes the state, not what the switch compares it with.
 */
public interface Principle {

    /** The signal. */
    double signal(TankState state);

    /** Unit of the signal; empty for a pure number. */
    String unit();

    /** Loss: the tank's conductance. */
    record Loss() implements Principle {
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
        public double signal(TankState state) {
            double ratio = state.frequency() / free.frequency();
            return Math.max(ratio, 1 / ratio);
        }

        @Override
        public String unit() {
            return "";
        }
    }

    /**
     * Ferrous-selective: the rise of the inductance, L/L0, which good conductors lower.
     *
     * @param free the tank in free air
     */
    record FerrousSelective(TankState free) implements Principle {
        @Override
        public double signal(TankState state) {
            return state.inductance() / free.inductance();
        }

        @Override
        public String unit() {
            return "";
        }
    }

    /**
     * Non-ferrous-selective: the fall of the inductance, L0/L. Steel lowers it too where its skin effect outweighs its permeability: the frequency decides.
     *
     * @param free the tank in free air
     */
    record NonFerrousSelective(TankState free) implements Principle {
        @Override
        public double signal(TankState state) {
            return free.inductance() / state.inductance();
        }

        @Override
        public String unit() {
            return "";
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
        public double signal(TankState state) {
            return weight * state.conductance() / free.conductance()
                    + (1 - weight) * free.inductance() / state.inductance();
        }

        @Override
        public String unit() {
            return "";
        }
    }
}
