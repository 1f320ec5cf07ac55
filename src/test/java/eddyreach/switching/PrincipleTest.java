package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import eddyreach.oscillator.Tank;
import eddyreach.oscillator.UnworkableException;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** Invented coil of 200 uH and 3 ohm; targets whose resistance and inductance change exponentially with distance. */
class PrincipleTest {

    private static final Tank TANK = Tank.forFrequency(200e-6, 3, 200e3);
    private static final TankState FREE = TankState.of(TANK, 200e-6, 3);
    private static final double DECAY = 1.4e-3;

    /** The tank before a target that adds a resistance, ohm, and changes the inductance, H, at contact. */
    private static DoubleFunction<TankState> target(double resistance, double inductance) {
        return g ->
                TankState.of(TANK, 200e-6 + inductance * Math.exp(-g / DECAY), 3 + resistance * Math.exp(-g / DECAY));
    }

    private static final DoubleFunction<TankState> STEEL = target(40, 12e-6);
    private static final DoubleFunction<TankState> COPPER = target(8, -50e-6);
    private static final EqualDistance STUDY = new EqualDistance(FREE, 3e-3, 0.1, 15e-3, 100);

    @Test
    void stateFollowsTheTank() {
        assertThat(FREE.frequency()).isCloseTo(200e3, within(1e-6));
        assertThat(FREE.conductance()).isCloseTo(3 * TANK.capacitance() / 200e-6, within(1e-18));
        assertThatIllegalArgumentException().isThrownBy(() -> new TankState(1, 0, 1, 1));
    }

    /** Each principle sees, trimmed on what it is made for, that at s_r, and is blind to what it is made to ignore. */
    @Test
    void eachPrincipleSeesItsMetals() {
        List<DoubleFunction<TankState>> both = List.of(STEEL, COPPER);
        List<Double> loss = STUDY.distances(new Principle.Loss(), STEEL, both);
        assertThat(loss.get(0)).isCloseTo(3e-3, within(1e-9));
        assertThat(loss.get(1)).isBetween(0.2e-3, 2e-3);
        List<Double> inductance = STUDY.distances(new Principle.Inductance(FREE), STEEL, both);
        assertThat(inductance.get(0)).isCloseTo(3e-3, within(1e-9));
        assertThat(inductance.get(1)).isGreaterThan(3e-3);
        List<Double> ferrous = STUDY.distances(new Principle.FerrousSelective(FREE), STEEL, both);
        assertThat(ferrous.get(0)).isCloseTo(3e-3, within(1e-9));
        assertThat(ferrous.get(1)).isZero();
        List<Double> other = STUDY.distances(new Principle.NonFerrousSelective(FREE), COPPER, both);
        assertThat(other.get(0)).isZero();
        assertThat(other.get(1)).isCloseTo(3e-3, within(1e-9));
        assertThat(new Principle.Loss().unit()).isEqualTo("S");
        assertThat(new Principle.Inductance(FREE).unit()).isEmpty();
    }

    /** In closed form: an inductance that falls by a exp(-g/d) is recognised where it has fallen as far as that of the standard target at s_r. */
    @Test
    void inductanceInClosedForm() {
        Random random = new Random(61);
        for (int i = 0; i < 50; i++) {
            double fall = 10e-6 + 80e-6 * random.nextDouble();
            List<Double> found = STUDY.distances(
                    new Principle.NonFerrousSelective(FREE), COPPER, List.of(target(5 * random.nextDouble(), -fall)));
            double expected = 3e-3 + DECAY * Math.log(fall / 50e-6);
            assertThat(found.get(0)).isCloseTo(expected, within(1e-9));
        }
    }

    /** A switch that cannot be trimmed on its standard target says so: copper does not raise the inductance. */
    @Test
    void trimOutOfReach() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> STUDY.distances(new Principle.FerrousSelective(FREE), COPPER, List.of(STEEL)))
                .matches(e -> !e.anyWorks())
                .withMessageContaining("before its standard target the inductance should fall from 3.00000 mm");
    }

    @Test
    void signalsAreOneInFreeAir() {
        assertThat(new Principle.Inductance(FREE).signal(FREE)).isEqualTo(1);
        assertThat(new Principle.FerrousSelective(FREE).signal(FREE)).isEqualTo(1);
        assertThat(new Principle.NonFerrousSelective(FREE).signal(FREE)).isEqualTo(1);
        assertThat(new Principle.WeightedSum(FREE, 0.3).signal(FREE)).isCloseTo(1, within(1e-15));
        assertThat(new Principle.Loss().signal(FREE)).isEqualTo(FREE.conductance());
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> new Principle.WeightedSum(FREE, 1.5))
                .withMessage("weight of the loss 1.500: must be at least 0 and at most 1");
    }

    /**
     * Two metals can always be brought to one distance when one leads in loss and the other in inductance, whatever their shares. To first order in the
     * changes the signal's rise is w dR/R0 - dL/L0 for small w, equal for both at w = (dL2 - dL1) R0/((dR1 - dR2) L0).
     */
    @Test
    void twoMetalsComeToOneDistance() {
        Random random = new Random(62);
        for (int i = 0; i < 5; i++) {
            DoubleFunction<TankState> steel = target(20 + 40 * random.nextDouble(), 12e-6 * random.nextDouble());
            DoubleFunction<TankState> copper = target(1 + random.nextDouble(), -40e-6 - 20e-6 * random.nextDouble());
            EqualDistance.Found found = STUDY.find(steel, List.of(steel, copper));
            assertThat(found.spread()).isLessThan(2e-3);
            assertThat(found.byLossAlone()).isGreaterThan(0.2);
            assertThat(found.distances().get(0)).isCloseTo(3e-3, within(1e-9));
        }
    }

    /** A third metal leaves a spread, and no other weight of a fine scan does better. */
    @Test
    void noWeightOfAFineScanIsBetter() {
        List<DoubleFunction<TankState>> metals = List.of(STEEL, COPPER, target(14, -38e-6), target(60, 0));
        EqualDistance.Found found = STUDY.find(STEEL, metals);
        assertThat(found.spread()).isBetween(0.01, found.byLossAlone());
        double best = Double.POSITIVE_INFINITY;
        // with little weight of the loss there is nothing to trim on: this steel raises the inductance
        for (double x = -4; x <= 1; x += 0.02) {
            List<Double> d = STUDY.distances(new Principle.WeightedSum(FREE, 1 / (1 + Math.pow(10, x))), STEEL, metals);
            double largest = d.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
            double smallest = d.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
            best = Math.min(best, (largest - smallest) / 3e-3);
        }
        assertThat(found.spread()).isLessThanOrEqualTo(best + 1e-3);
    }

    /** A foil so thin that it is hardly there is seen at no weight. */
    @Test
    void noWeightForAnInvisibleTarget() {
        assertThatExceptionOfType(UnworkableException.class)
                .isThrownBy(() -> STUDY.find(STEEL, List.of(COPPER, target(0.001, -1e-12))))
                .withMessageStartingWith("no weight lets every target be detected");
        assertThatIllegalArgumentException().isThrownBy(() -> STUDY.find(STEEL, List.of()));
    }
}
