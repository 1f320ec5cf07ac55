package eddyreach.field.targets;

import static eddyreach.field.axial.ReferenceSwitch.MM;
import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.closedform.LayeredPlate;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.Join;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A target before a background, joined by waves that run to and fro, against all of it in one field problem: within 0.05 % of |dZ|. */
class BackedTargetTest {

    private static final double TOLERANCE = 5e-4;
    private static final double CELSIUS = 20;
    private static final Band BAND = new Band(ReferenceSwitch.OMEGA, 1.15 * ReferenceSwitch.OMEGA);

    /** Radius of the plate that stands for an endless one in the direct solve, m. */
    private static final double WIDE = 60 * MM;

    @ParameterizedTest
    @CsvSource({
        "steel, 3, 0.6, 2, aluminium, 5",
        "copper, 3, 1, 4, steel, 4",
        "stainless, 10.2, 1, 1, copper, 1",
        "aluminium, 10.2, 3, 3, stainless, 2"
    })
    void againstDirect(String target, double radius, double thickness, double gap, String background, double behind) {
        List<Part> parts = List.of(disc(target, radius * MM, 0, thickness * MM));
        double z = (gap + thickness + behind) * MM;
        WaveBasis basis = Resolution.FINE.waves(ReferenceSwitch.SCALE, 0);
        Resolution resolution = Resolution.FINE.withoutFields();
        ThroughTarget through = new ThroughTarget(parts, basis, BAND, CELSIUS, resolution, ReferenceSwitch.SCALE);
        Material back = material(background);
        PlateTarget plate = new PlateTarget(LayeredPlate.single(back.conductivity20(), back.muReal(), 2 * MM), basis);
        double omega = ReferenceSwitch.OMEGA;
        Join join = ReferenceSwitch.field(resolution).at(omega);
        Complex joined = join.impedance(new BackedTarget(through, plate, behind * MM).at(omega), gap * MM);
        List<Part> all = new ArrayList<>();
        all.add(disc(target, radius * MM, gap * MM, thickness * MM));
        all.add(disc(background, WIDE, z, 2 * MM));
        Complex direct = new DirectSolve(
                        ReferenceSwitch.parts(),
                        ReferenceSwitch.COIL,
                        all,
                        omega,
                        CELSIUS,
                        resolution,
                        ReferenceSwitch.SCALE)
                .change();
        assertThat(joined.subtract(direct).abs())
                .as("%s against %s", joined, direct)
                .isLessThan(TOLERANCE * direct.abs());
        BodyTarget alone = new BodyTarget(parts, basis, BAND, CELSIUS, resolution, ReferenceSwitch.SCALE);
        Complex without = join.impedance(alone.at(omega), gap * MM);
        Complex far = join.impedance(new BackedTarget(through, plate, 1).at(omega), gap * MM);
        assertThat(far.subtract(without).abs()).as("a background 1 m behind").isLessThan(1e-4 * without.abs());
    }

    private static Part disc(String material, double radius, double z, double thickness) {
        return new Part(material, Role.TARGET, new Section(0, radius, z, z + thickness), material(material));
    }

    private static Material material(String name) {
        return switch (name) {
            case "steel" -> ReferenceSwitch.STEEL;
            case "copper" -> ReferenceSwitch.COPPER;
            case "stainless" -> ReferenceSwitch.STAINLESS;
            default -> ReferenceSwitch.ALUMINIUM;
        };
    }
}
