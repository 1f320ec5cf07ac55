package eddyreach.switching;

import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;

/** How fast a row of targets may pass so that each gives one clean pulse. */
public sealed interface SpeedLimit {

    /** What takes time. */
    enum Stage {
        /** The amplitude of the oscillation follows the loss late. */
        OSCILLATOR,
        /** The demodulator's filter. */
        DEMODULATOR,
        /** The delay of the output. */
        DELAY,
        /** The share of the pitch for which the output is on, or off, at rest, against the shortest pulse asked for. */
        GEOMETRY
    }

    /**
     * There is a highest frequency; up to it each target gives one clean pulse.
     *
     * @param frequency highest frequency found, Hz; the next is at most 0.1 % higher and fails
     * @param below the pulse train there
     * @param above the pulse train that fails
     * @param shares what each stage costs, s: the period without it is shorter by so much, 0 when it is not; of the geometry the period that is left when all else follows at once
     */
    record Limited(double frequency, PulseTrain below, PulseTrain above, Map<Stage, Double> shares)
            implements SpeedLimit {
        public Limited {
            shares = Collections.unmodifiableMap(new EnumMap<>(shares));
        }

        /**
         * What limits: the geometry when even a switch that follows at once would not do twice as many, else the stage that costs most.
         */
        public Stage limiting() {
            if (2 * shares.get(Stage.GEOMETRY) * frequency >= 1) {
                return Stage.GEOMETRY;
            }
            return Stream.of(Stage.OSCILLATOR, Stage.DEMODULATOR, Stage.DELAY)
                    .max(Comparator.comparing(shares::get))
                    .filter(s -> shares.get(s) > 0)
                    .orElse(Stage.GEOMETRY);
        }
    }

    /**
     * Not even a row that creeps gives one clean pulse each.
     *
     * @param train what it gives
     */
    record NeverClean(PulseTrain train) implements SpeedLimit {}

    /** Every row gives clean pulses, as nothing takes time. */
    record Unlimited() implements SpeedLimit {}
}
