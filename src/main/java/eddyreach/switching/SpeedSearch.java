package eddyreach.switching;

import eddyreach.numerics.Require;
import eddyreach.oscillator.Detector;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Searches the highest frequency at which each target of a row gives one clean pulse: upwards from slow in steps of 30 % to the first that fails, then to 0.1 % by halving.
 * Frequencies that fail between two steps that are clean would be missed. What each stage costs follows from the same search without it.
 */
public final class SpeedSearch {

    /** The search begins with a period of so many times all that takes time. */
    private static final double SLOW = 20;

    /** So much slower, and so many times, when that is not clean: down to 16 mHz for a switch of 1 ms. */
    private static final int SLOWER = 5;

    private static final double STEP = 1.3;
    private static final double ACCURACY = 1e-3;

    private final Teeth teeth;
    private final double shortest;

    /**
     * @param teeth the row
     * @param shortest shortest time for which a clean pulse is on, and off, s
     */
    public SpeedSearch(Teeth teeth, double shortest) {
        this.teeth = teeth;
        this.shortest = Require.notNegative("shortest pulse", shortest, "s");
    }

    private record Bracket(PulseTrain below, PulseTrain above) {

        double period() {
            return 1 / below.frequency();
        }
    }

    /**
     * Where a search begins.
     *
     * @param settled the answer, when there is nothing to search
     * @param slow a train that is clean, when there is
     * @param geometry period left when all follows at once, s
     */
    private record Opening(Optional<SpeedLimit> settled, Optional<PulseTrain> slow, double geometry) {

        static Opening settled(SpeedLimit limit, double geometry) {
            return new Opening(Optional.of(limit), Optional.empty(), geometry);
        }
    }

    private Opening open(Timing timing) {
        Detector detector = timing.detector();
        OutputStage output = timing.output();
        // at rest the pulses as shares of the pitch do not depend on the speed: any will do
        PulseTrain rest = PulseTrain.of(
                new Timing(detector.withoutInertia().withoutFilter(), output.withoutDelay()), teeth, 1, 0);
        if (!rest.clean()) {
            return Opening.settled(new SpeedLimit.NeverClean(rest), 0);
        }
        double geometry = shortest / Math.min(rest.shortestOn(), rest.shortestOff());
        double scale = timing.timeConstant() + geometry;
        if (scale == 0) {
            return Opening.settled(new SpeedLimit.Unlimited(), geometry);
        }
        PulseTrain slow = train(timing, 1 / (SLOW * scale));
        // next to a threshold the amplitude takes much longer than the time constants
        for (int i = 0; i < SLOWER && !slow.clean(); i++) {
            slow = train(timing, slow.frequency() / SLOWER);
        }
        if (!slow.clean()) {
            return Opening.settled(new SpeedLimit.NeverClean(slow), geometry);
        }
        return new Opening(Optional.empty(), Optional.of(slow), geometry);
    }

    /** The highest frequency alone, Hz; 0 when not even a row that creeps gives clean pulses, infinite when every row does. */
    public double highest(Timing timing) {
        Opening opening = open(timing);
        return opening.slow()
                .map(slow -> search(timing, slow).below.frequency())
                .orElseGet(() -> opening.settled().orElseThrow() instanceof SpeedLimit.Unlimited
                        ? Double.POSITIVE_INFINITY
                        : 0.0);
    }

    /** The limit for a switch. */
    public SpeedLimit limit(Timing timing) {
        Opening opening = open(timing);
        if (opening.settled().isPresent()) {
            return opening.settled().get();
        }
        Detector detector = timing.detector();
        OutputStage output = timing.output();
        double geometry = opening.geometry();
        Bracket found = search(timing, opening.slow().orElseThrow());
        Map<SpeedLimit.Stage, Double> shares = new EnumMap<>(SpeedLimit.Stage.class);
        shares.put(SpeedLimit.Stage.GEOMETRY, geometry);
        shares.put(
                SpeedLimit.Stage.OSCILLATOR,
                cost(found, geometry, timing, new Timing(detector.withoutInertia(), output)));
        shares.put(
                SpeedLimit.Stage.DEMODULATOR,
                cost(found, geometry, timing, new Timing(detector.withoutFilter(), output)));
        shares.put(SpeedLimit.Stage.DELAY, cost(found, geometry, timing, new Timing(detector, output.withoutDelay())));
        return new SpeedLimit.Limited(found.below.frequency(), found.below, found.above, shares);
    }

    /** By how much the period is shorter without a stage, s; 0 when it is not. */
    private double cost(Bracket found, double geometry, Timing timing, Timing without) {
        if (without.equals(timing)) {
            return 0;
        }
        Detector detector = without.detector();
        if (detector.capacitance() == 0
                && detector.timeConstant() == 0
                && without.output().delay() == 0) {
            return found.period() - geometry;
        }
        PulseTrain same = train(without, found.below.frequency());
        // a lag may help: it lengthens the pulse that is too short when the amplitude returns more slowly than it fell
        return same.clean() ? found.period() - search(without, same).period() : 0;
    }

    /** From a train that is clean. */
    private Bracket search(Timing timing, PulseTrain clean) {
        PulseTrain below = clean;
        PulseTrain above = train(timing, STEP * below.frequency());
        while (above.clean()) {
            below = above;
            above = train(timing, STEP * below.frequency());
        }
        while (above.frequency() > (1 + ACCURACY) * below.frequency()) {
            PulseTrain middle = train(timing, Math.sqrt(above.frequency() * below.frequency()));
            if (middle.clean()) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return new Bracket(below, above);
    }

    private PulseTrain train(Timing timing, double frequency) {
        return PulseTrain.of(timing, teeth, frequency, shortest);
    }
}
