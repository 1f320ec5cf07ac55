package eddyreach.engine.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class CurveTest {

    private static Curve.Builder one(int room) {
        Curve.Builder b = new Curve.Builder(room);
        b.add(1e-3, new TankState(2e6, new Complex(10, 200), Complex.ZERO, 3e-4), 4, -5e-6, 6, 7);
        return b;
    }

    @Test
    void keepsWhatWasAdded() {
        Curve c = one(1).build();
        assertThat(c.size()).isEqualTo(1);
        assertThat(new double[] {c.distance(0), c.lossResistance(0), c.inductanceChange(0), c.impedanceError(0)})
                .containsExactly(1e-3, 4, -5e-6, 6);
        assertThat(new double[] {c.resistance(0), c.inductance(0), c.frequency(0), c.conductance(0), c.amplitude(0)})
                .containsExactly(10, 1e-4, 2e6 / (2 * Math.PI), 3e-4, 7);
    }

    @Test
    void nobodyCanChangeIt() {
        Curve c = one(1).build();
        c.conductance()[0] = 0;
        assertThat(c.conductance()).containsExactly(3e-4);
        assertThat(c.conductance(0)).isEqualTo(3e-4);
    }

    @Test
    void isNotBuiltHalfFilled() {
        assertThatThrownBy(() -> one(2).build()).hasMessage("1 of 2 distances are added");
    }
}
