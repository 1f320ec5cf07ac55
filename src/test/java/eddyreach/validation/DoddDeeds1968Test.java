package eddyreach.validation;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.CoilOverPlate;
import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.RectangularCoil;
import eddyreach.closedform.Reflector;
import org.apache.commons.math3.complex.Complex;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/**
 * C. V. Dodd and W. E. Deeds, Analytical solutions to eddy-current probe-coil problems, J. Appl. Phys. 39 (1968) 2829, in the form for
 * layers.
 */
class DoddDeeds1968Test {

    private static final RectangularCoil SENSOR = new RectangularCoil(2.5e-3, 5.5e-3, 2e-3, 100);

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
