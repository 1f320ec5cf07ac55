package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.RectangularCoil;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** J. Spielrein, Die Induktivitaet eisenfreier Kreisringspulen, Arch. Elektrotech. 3 (1915) 187. */
class Spielrein1915Test {

    /** Computed by 50-digit quadrature of Maxwell's mutual inductance over all pairs of radii; bore over outer radius. */
    @ParameterizedTest
    @CsvSource({
        "0, 6.96957042567",
        "1e-5, 6.96970981917",
        "1e-4, 6.97096454874",
        "1e-3, 6.98353040296",
        "0.01, 7.11100983994",
        "0.1, 8.55580786572",
    })
    void flatDiscCoilsComputed(double bore, double expected) {
        double l = CoilInductance.rectangular(new RectangularCoil(bore * 0.03, 0.03, 0, 10));
        assertThat(l * 1e9 / (3 * 100)).isCloseTo(expected, within(1e-10));
    }
}
