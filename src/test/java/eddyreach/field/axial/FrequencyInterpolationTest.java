package eddyreach.field.axial;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.join.Join;
import eddyreach.field.join.Reflection;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** Operators in between two frequencies against operators solved there, on the same mesh: within 0.15 % of |dZ|: a linear
 * interpolation over 15 % of a term in w^-0.5 is off by up to 0.75 (0.15)^2 / 8 = 0.2 % of it. */
class FrequencyInterpolationTest {

    private static final InventedSwitch SWITCH = InventedSwitch.medium();
    private static final Resolution COARSE = Resolution.COARSE;
    private static final Band BAND = new Band(SWITCH.omega(), 1.15 * SWITCH.omega());

    /** Proximity loss grows with the frequency. */
    private static final DoubleFunction<CoilRegion> COIL =
            omega -> new CoilRegion(SWITCH.coil().section(), SWITCH.coil().turns(), 0.01 * omega / SWITCH.omega());

    @Test
    void withinTheBand() {
        WaveBasis basis = COARSE.waves(SWITCH.scale(), 0);
        Layout layout = new Layout(
                SWITCH.parts(), COIL.apply(BAND.high()), basis, 1, COARSE.body(), SWITCH.scale(), BAND.high(), 20);
        double[] omegas = {1.04 * BAND.low(), 1.075 * BAND.low(), 1.12 * BAND.low()};
        FrequencyPair pair = FrequencyPair.solve(layout, COIL, BAND, 20, false);
        FrequencyPair[] exact = new FrequencyPair[omegas.length];
        for (int i = 0; i < omegas.length; i++) {
            exact[i] = FrequencyPair.solve(layout, COIL, new Band(omegas[i], BAND.high()), 20, false);
            Complex z = exact[i].impedance(omegas[i]);
            assertThat(pair.impedance(omegas[i]).getImaginary() / z.getImaginary() - 1)
                    .isBetween(-1e-5, 1e-5);
            assertThat(pair.impedance(omegas[i]).getReal() / z.getReal() - 1).isBetween(-2e-3, 2e-3);
        }
        for (Material m : List.of(ReferenceSwitch.STEEL, ReferenceSwitch.STAINLESS, ReferenceSwitch.COPPER)) {
            List<Part> disc = SWITCH.disc(m, 0);
            Layout around = new Layout(disc, null, basis, -1, COARSE.target(), SWITCH.scale(), BAND.high(), 20);
            FrequencyPair target = FrequencyPair.solve(around, w -> null, BAND, 20, false);
            for (int i = 0; i < omegas.length; i++) {
                FrequencyPair there =
                        FrequencyPair.solve(around, w -> null, new Band(omegas[i], BAND.high()), 20, false);
                for (double gap : new double[] {0.5e-3, 3e-3, 8e-3}) {
                    Complex a = join(basis, pair, target, omegas[i], gap);
                    Complex b = join(basis, exact[i], there, omegas[i], gap);
                    assertThat(a.subtract(b).abs()).isLessThan(1.5e-3 * b.abs());
                }
            }
        }
    }

    private static Complex join(WaveBasis basis, FrequencyPair side, FrequencyPair target, double omega, double gap) {
        double[][] t = target.response(omega);
        return new Join(basis, omega, side.response(omega), side.link(omega))
                .impedance(new Reflection.Full(t[0], t[1]), gap);
    }
}
