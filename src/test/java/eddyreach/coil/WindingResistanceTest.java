package eddyreach.coil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import org.junit.jupiter.api.Test;

class WindingResistanceTest {

    private static final Material COPPER = new Material("cu", "copper", 58e6, 0.00393, 1, 0, "ASTM E1004");
    private static final Section WINDOW = new Section(3.3e-3, 5.5e-3, -3.1e-3, -0.8e-3);
    private static final double OMEGA = 2 * Math.PI * 200e3;

    private static WindingResistance winding(int turns, double diameter, int strands) {
        return new WindingResistance(new Winding(WINDOW, turns, new Wire(diameter, strands, COPPER)));
    }

    /** 80 turns of 0.2 mm: 80 pi 8.8 mm = 2.2117 m over 58 MS/m and pi 0.01 mm2. */
    @Test
    void directCurrentResistanceAndItsTemperature() {
        WindingResistance w = winding(80, 0.2e-3, 1);
        assertThat(w.length()).isCloseTo(2.21168, within(1e-5));
        assertThat(w.dcResistance(20)).isCloseTo(1.21379, within(1e-5));
        assertThat(w.dcResistance(120) / w.dcResistance(20)).isCloseTo(1.393, within(1e-12));
        assertThat(w.fillFactor()).isCloseTo(0.4967, within(1e-4));
    }

    @Test
    void strandsShareTheCurrent() {
        WindingResistance w = winding(80, 0.05e-3, 10);
        assertThat(w.dcResistance(20)).isCloseTo(winding(80, 0.05e-3, 1).dcResistance(20) / 10, within(1e-12));
        assertThat(w.skinResistance(OMEGA, 20) / w.dcResistance(20))
                .isCloseTo(RoundConductor.skinFactor(0.025e-3 * Math.sqrt(OMEGA * Material.MU0 * 58e6)), within(1e-12));
    }

    /** Power: N l n P'(H) with H = h I must be R I^2 / 2; P' at low frequency is elementary. */
    @Test
    void proximityCoefficientBalancesThePower() {
        double omega = 2 * Math.PI * 1e3;
        double d = 0.1e-3;
        double current = 0.013;
        double perAmpere = 9e3;
        double perLength =
                Math.PI * Math.pow(omega * Material.MU0 * perAmpere * current, 2) * 58e6 * Math.pow(d, 4) / 128;
        WindingResistance w = winding(80, d, 3);
        double power = perLength * w.length() * 3;
        double resistance = w.proximityCoefficient(omega, 20) * perAmpere * perAmpere;
        assertThat(resistance * current * current / 2).isCloseTo(power, withinPercentage(1e-3));
    }

    @Test
    void totalIsSkinPlusProximityWithoutTheStrandsOwnField() {
        WindingResistance w = winding(80, 0.2e-3, 1);
        double own = w.ownMeanSquareField();
        assertThat(w.resistance(OMEGA, 20, 1e8))
                .isCloseTo(
                        w.skinResistance(OMEGA, 20) + w.proximityCoefficient(OMEGA, 20) * (1e8 - own),
                        withinPercentage(1e-10));
        assertThat(w.resistance(OMEGA, 20, own)).isEqualTo(w.skinResistance(OMEGA, 20));
        assertThat(winding(80, 0.05e-3, 10).ownMeanSquareField()).isCloseTo(own / 10, withinPercentage(1e-10));
    }

    /**
     * Straight conductors in a square array of m by m cells: the field of the others at each conductor, against the
     * smeared current's mean square less the own term. The own term counts a cell as round; for a square cell it is
     * 3.4 % smaller, which bounds the difference.
     */
    @Test
    void ownFieldTurnsTheSmearedMeanIntoThatOfTheOtherTurns() {
        int m = 5;
        int fine = 8;
        double others = 0;
        for (int i = 0; i < m * m; i++) {
            others += meanSquare(m, 1, i / m + 0.5, i % m + 0.5, i) / (m * m);
        }
        double smeared = 0;
        int n = m * fine;
        for (int i = 0; i < n * n; i++) {
            smeared += meanSquare(n, fine, (i / n + 0.5) / fine, (i % n + 0.5) / fine, i) / (n * n);
        }
        double own = 1 / (8 * Math.PI);
        assertThat(own / others).isGreaterThan(0.04);
        assertThat(smeared - own).isCloseTo(others, within(0.05 * own));
    }

    /** |H|^2 at (x, y) of n by n filaments on a grid with the given number to a cell's side, without one of them. */
    private static double meanSquare(int n, int perCell, double x, double y, int without) {
        double hx = 0;
        double hy = 0;
        for (int s = 0; s < n * n; s++) {
            if (s != without) {
                double dx = x - (s / n + 0.5) / perCell;
                double dy = y - (s % n + 0.5) / perCell;
                double scale = 1 / (2 * Math.PI * (dx * dx + dy * dy) * perCell * perCell);
                hx -= dy * scale;
                hy += dx * scale;
            }
        }
        return hx * hx + hy * hy;
    }

    @Test
    void rejectsWhatCannotBeWound() {
        assertThatIllegalArgumentException().isThrownBy(() -> winding(0, 0.1e-3, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> winding(80, 0.1e-3, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> winding(80, -0.1e-3, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> winding(80, 0.3e-3, 1))
                .withMessageContaining("of the window");
        Material iron = new Material("fe", "iron", 10e6, 0.005, 100, 0, "test");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WindingResistance(new Winding(WINDOW, 80, new Wire(0.1e-3, 1, iron))))
                .withMessageContaining("non-magnetic");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WindingResistance(new Winding(WINDOW, 80, new Wire(0.1e-3, 1, Material.AIR))))
                .withMessageContaining("conductivity of air");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> winding(80, 0.1e-3, 1).resistance(OMEGA, 20, Double.NaN));
    }
}
