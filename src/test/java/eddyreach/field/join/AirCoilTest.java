package eddyreach.field.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.CoilOverPlate;
import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.RectangularCoil;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.PlateTarget;
import eddyreach.geometry.Section;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A coil without core or tube: its inductance on the mesh, and its change by an endless plate. */
class AirCoilTest {

    private static final double MM = 1e-3;
    private static final double OMEGA = 2 * Math.PI * 300e3;
    private static final double OUTER = 5.5 * MM;

    private static final Fineness EVEN = new Fineness(5, 0.02, 1, 2, 0.2, 40);

    /** Elements of 0.2 radii round the coil: a window's faces alone are not refined, whatever its size. */
    private static final Resolution SMOOTH = new Resolution(EVEN, EVEN, 1, 1, 1.15, true);

    private static SwitchField coil(double r0, double r1, double length, int turns, Resolution resolution) {
        CoilRegion region = new CoilRegion(new Section(r0, r1, -length, 0), turns, 0);
        WaveBasis basis = WaveBasis.of(48, 40 / r1);
        return new SwitchField(List.of(), w -> region, basis, new Band(OMEGA, 1.15 * OMEGA), 20, resolution, r1);
    }

    /**
     * Inductance of coils of rectangular section in uH per turn squared, mean radius, length and depth in cm: the exact integral,
     * computed from its formula by an independent program; the last is Brooks's coil, 0.016994 a uH (Brooks, BS J.
     * Research 7 (1931) 289). The mesh leaves 1e-5, the outer boundary included.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 1, 1, 0.4007798914",
        "4, 1, 1, 0.1147126953",
        "10, 4, 2, 0.2647486553",
        "10, 2, 4, 0.2643188921",
        "1.5, 1, 1, 0.0254906732"
    })
    void inductance(double mean, double length, double depth, double expected) {
        double r0 = (mean - depth / 2) * 1e-2;
        double l = coil(r0, r0 + depth * 1e-2, length * 1e-2, 1, SMOOTH)
                        .impedance(OMEGA)
                        .getImaginary()
                / OMEGA;
        assertThat(l * 1e6).isCloseTo(expected, within(5e-5 * expected));
    }

    /** Coil of 100 turns, r 2.5 to 5.5 mm, 2 mm long, in air and 2 mm in front of an endless plate of copper, at 300 kHz: both joins, and the closed forms. */
    @Test
    void bothWaysOfJoiningAgree() {
        SwitchField field = coil(2.5 * MM, OUTER, 2 * MM, 100, Resolution.FINE);
        Reflection plate = new PlateTarget(LayeredPlate.single(58e6, 1, 1 * MM), field.basis()).at(OMEGA);
        Complex dz = field.at(OMEGA).impedance(plate, 2 * MM);
        assertThat(field.at(OMEGA).solve(plate, 2 * MM).dz().subtract(dz).abs()).isLessThan(1e-12 * dz.abs());
        double exact = CoilInductance.rectangular(new RectangularCoil(2.5 * MM, OUTER, 2 * MM, 100));
        assertThat(field.impedance(OMEGA).getImaginary() / OMEGA).isCloseTo(exact, within(1e-3 * exact));
        Complex closed = CoilOverPlate.impedanceChange(
                new RectangularCoil(2.5 * MM, OUTER, 2 * MM, 100), 2 * MM, LayeredPlate.single(58e6, 1, 1 * MM), OMEGA);
        assertThat(dz.subtract(closed).abs()).isLessThan(1e-4 * closed.abs());
    }
}
