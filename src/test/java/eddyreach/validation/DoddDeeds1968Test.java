package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.CoilOverPlate;
import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.RectangularCoil;
import eddyreach.closedform.Reflector;
import org.apache.commons.math3.complex.Complex;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * C. V. Dodd and W. E. Deeds, Analytical solutions to eddy-current probe-coil problems, J. Appl. Phys. 39 (1968) 2829, in the form for
 * layers. All values computed from the formula by an independent program.
 */
class DoddDeeds1968Test {

    private static final RectangularCoil SENSOR = new RectangularCoil(2.5e-3, 5.5e-3, 2e-3, 100);

    /** The unflawed plate of TEAM workshop problem 15: 30.6 MS/m, 12.22 mm. Lengths in mm, dL in mH. */
    @ParameterizedTest
    @CsvSource({
        "6.15, 12.4, 6.15, 3790, 0.88, 900, 120.650507, -47.3323250, 0.6e-6, 0.6e-7",
        "9.34, 18.4, 9.0, 408, 2.03, 7000, 5.61318551, -1.14425818, 0.6e-8, 0.6e-8",
    })
    void aluminiumPlate(
            double r1,
            double r2,
            double length,
            double turns,
            double liftOff,
            double frequency,
            double dR,
            double dLmH,
            double digitR,
            double digitL) {
        double omega = 2 * Math.PI * frequency;
        var coil = new RectangularCoil(r1 * 1e-3, r2 * 1e-3, length * 1e-3, turns);
        Complex dZ =
                CoilOverPlate.impedanceChange(coil, liftOff * 1e-3, LayeredPlate.single(30.6e6, 1, 12.22e-3), omega);
        assertThat(dZ.getReal()).isCloseTo(dR, within(digitR));
        assertThat(dZ.getImaginary() / omega * 1e3).isCloseTo(dLmH, within(digitL));
    }

    /** A coil of the size of a switch's, plate 1 mm thick, lift-off 2 mm, 300 kHz; dL in uH. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "copper, 58e6, 1, 0.67038066, 0.6e-8, -9.9298103",
        "aluminium, 37.7e6, 1, 0.82249031, 0.6e-8, -9.8406046",
        "brass, 15.5e6, 1, 1.2427723, 0.6e-7, -9.5838914",
        "austenitic stainless, 1.389e6, 1, 3.4892215, 0.6e-7, -8.2154587",
        "mild steel, 6e6, 100, 7.2772144, 0.6e-7, -1.9082582",
    })
    void sensorSizedCoil(String plate, double sigma, double mu, double dR, double digit, double dLuH) {
        double omega = 2 * Math.PI * 300e3;
        Complex dZ = CoilOverPlate.impedanceChange(SENSOR, 2e-3, LayeredPlate.single(sigma, mu, 1e-3), omega);
        assertThat(dZ.getReal()).isCloseTo(dR, within(digit));
        assertThat(dZ.getImaginary() / omega * 1e6).isCloseTo(dLuH, within(0.6e-7));
    }

    @Test
    void sensorSizedCoilInAir() {
        assertThat(CoilInductance.rectangular(SENSOR)).isCloseTo(70.8702612e-6, within(0.6e-13));
    }

    /** All lengths times 10 and frequency over 100 leave every phase as it is: dZ/w grows tenfold, dZ falls tenfold. */
    @Test
    void scaleLaw() {
        for (double liftOff : new double[] {0, 0.5e-3, 4e-3}) {
            var large = new RectangularCoil(25e-3, 55e-3, 20e-3, 100);
            double omega = 2 * Math.PI * 200e3;
            Complex small = CoilOverPlate.impedanceChange(SENSOR, liftOff, LayeredPlate.single(15e6, 3, 1e-3), omega);
            Complex big = CoilOverPlate.impedanceChange(
                    large, 10 * liftOff, LayeredPlate.single(15e6, 3, 10e-3), omega / 100);
            assertThat(big.multiply(10).subtract(small).abs()).isLessThan(1e-12 * small.abs());
        }
    }

    /** Two equal coils mirrored: -M, with M from the inductances of the halves and of the whole when they touch. */
    @Test
    void touchingAPerfectConductorMirrorsTheCoil() {
        double half = CoilInductance.rectangular(SENSOR);
        double whole = CoilInductance.rectangular(new RectangularCoil(2.5e-3, 5.5e-3, 4e-3, 200));
        double mutual = (whole - 2 * half) / 2;
        Complex dZ = CoilOverPlate.impedanceChange(SENSOR, 0, Reflector.perfectConductor(), 1);
        assertThat(dZ.getReal()).isZero();
        assertThat(dZ.getImaginary()).isCloseTo(-mutual, Percentage.withPercentage(1e-7));
    }
}
