package eddyreach.oscillator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class TankTest {

    @Test
    void atResonanceTheAdmittanceIsRealAndEqualsTheConductance() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            double l = 200e-6 * (0.2 + random.nextDouble());
            double r = 40 * random.nextDouble();
            Tank tank = new Tank(3e-9 * (0.2 + random.nextDouble()));
            Tank.Resonance at = tank.resonance(l, r).orElseThrow();
            Complex coil = new Complex(r, at.omega() * l);
            Complex y = new Complex(0, at.omega() * tank.capacitance()).add(coil.reciprocal());
            assertThat(y.getImaginary()).isCloseTo(0, within(1e-12 * at.omega() * tank.capacitance()));
            assertThat(at.conductance()).isCloseTo(y.getReal(), within(1e-9 * y.getReal()));
            assertThat(at.quality()).isCloseTo(at.omega() * l / r, within(1e-9 * at.quality()));
            assertThat(tank.conductance(l, r)).isEqualTo(at.conductance());
        }
    }

    @Test
    void chosenForAFrequencyItResonatesThere() {
        Tank tank = Tank.forFrequency(196.2e-6, 12, 200e3);
        assertThat(tank.resonance(196.2e-6, 12).orElseThrow().frequency()).isCloseTo(200e3, within(1e-6));
    }

    @Test
    void hasNoResonanceWhenOverdamped() {
        Tank tank = new Tank(1e-9);
        double critical = Math.sqrt(100e-6 / 1e-9);
        assertThat(tank.resonance(100e-6, 1.0001 * critical)).isEmpty();
        assertThat(tank.resonance(100e-6, 0.9999 * critical)).isPresent();
        assertThat(tank.conductance(100e-6, 2 * critical)).isCloseTo(2 / critical, within(1e-12));
    }

    @Test
    void theFrequencyGoesOnWhereThereIsNoResonance() {
        Tank tank = new Tank(1e-9);
        double critical = Math.sqrt(100e-6 / 1e-9);
        double undamped = 1 / Math.sqrt(100e-6 * 1e-9);
        assertThat(tank.frequency(100e-6, 0)).isCloseTo(undamped, within(1e-9 * undamped));
        assertThat(tank.frequency(100e-6, 0.5 * critical))
                .isEqualTo(tank.resonance(100e-6, 0.5 * critical).orElseThrow().omega());
        double where = Math.sqrt(0.75) * critical;
        assertThat(tank.frequency(100e-6, 0.999999 * where))
                .isCloseTo(tank.frequency(100e-6, 1.000001 * where), within(1e-5 * undamped));
        assertThat(tank.frequency(100e-6, 3 * critical)).isCloseTo(0.5 * undamped, within(1e-9 * undamped));
    }

    @Test
    void rejectsNonsense() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Tank(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tank(1e-9).conductance(-1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tank(1e-9).resonance(1e-4, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> Tank.forFrequency(1e-4, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Tank(1e-9).timeConstant(0));
    }
}
