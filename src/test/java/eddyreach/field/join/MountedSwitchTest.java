package eddyreach.field.join;

import static eddyreach.field.axial.ReferenceSwitch.MM;
import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A switch in a wall, joined to its target in the plane of the highest metal, against everything in one field problem. */
class MountedSwitchTest {

    private static final double TOLERANCE = 3e-3;
    private static final double CELSIUS = 20;
    private static final Band BAND = new Band(ReferenceSwitch.OMEGA, 1.15 * ReferenceSwitch.OMEGA);

    @ParameterizedTest
    @CsvSource({
        "aluminium, 0, 9, 0",
        "steel, 4, 9, 1",
        "steel, 4, 9, 0.1",
        "aluminium, 4, 14, 0",
        "steel, 4, 14, 0",
        "steel, 4, 14, 3",
    })
    void joinedAgainstDirect(String material, double sunk, double recess, double gap) {
        List<Part> parts = parts(material, sunk * MM, recess * MM, cut(recess * MM));
        Complex joined = joined(parts, sunk * MM, cut(recess * MM), gap * MM);
        Complex direct = new DirectSolve(
                        parts,
                        ReferenceSwitch.COIL,
                        ReferenceSwitch.disc(ReferenceSwitch.STEEL, (sunk + gap) * MM),
                        ReferenceSwitch.OMEGA,
                        CELSIUS,
                        Resolution.FINE,
                        ReferenceSwitch.SCALE)
                .change();
        assertThat(joined.subtract(direct).abs())
                .as("%s against %s", joined, direct)
                .isLessThan(TOLERANCE * direct.abs());
    }

    /** Three radii of the core beyond the widest opening: twice as much wall moves nothing by a tenth of a usual error bar. */
    @ParameterizedTest
    @CsvSource({"aluminium, 0, 9", "steel, 0, 9", "steel, 4, 14"})
    void aWallWithoutAnEndMayBeCut(String material, double sunk, double recess) {
        double cut = cut(recess * MM);
        double wide = cut + 3 * ReferenceSwitch.SCALE;
        Complex a = joined(parts(material, sunk * MM, recess * MM, cut), sunk * MM, cut, 4 * MM);
        Complex b = joined(parts(material, sunk * MM, recess * MM, wide), sunk * MM, wide, 4 * MM);
        assertThat(a.subtract(b).abs()).isLessThan(5e-4 * b.abs());
        Complex free = field(parts(material, sunk * MM, recess * MM, cut), sunk * MM, cut)
                .impedance(ReferenceSwitch.OMEGA);
        Complex freeWide = field(parts(material, sunk * MM, recess * MM, wide), sunk * MM, wide)
                .impedance(ReferenceSwitch.OMEGA);
        assertThat(free.getReal() / freeWide.getReal() - 1).isBetween(-3e-4, 3e-4);
        assertThat(free.getImaginary() / freeWide.getImaginary() - 1).isBetween(-1e-5, 1e-5);
    }

    private static double cut(double recess) {
        return recess + 3 * ReferenceSwitch.SCALE;
    }

    private static SwitchField field(List<Part> parts, double plane, double outer) {
        CoilRegion coil = ReferenceSwitch.COIL.shifted(-plane);
        return new SwitchField(
                parts.stream().map(p -> p.shifted(-plane)).toList(),
                w -> coil,
                Resolution.FINE.waves(ReferenceSwitch.SCALE, outer),
                BAND,
                CELSIUS,
                Resolution.FINE.withoutFields(),
                ReferenceSwitch.SCALE);
    }

    private static Complex joined(List<Part> parts, double plane, double outer, double gap) {
        SwitchField field = field(parts, plane, outer);
        BodyTarget target = new BodyTarget(
                ReferenceSwitch.disc(ReferenceSwitch.STEEL, 0),
                field.basis(),
                BAND,
                CELSIUS,
                Resolution.FINE.withoutFields(),
                ReferenceSwitch.SCALE);
        return field.at(ReferenceSwitch.OMEGA).impedance(target.at(ReferenceSwitch.OMEGA), gap);
    }

    /** The reference switch in a plate of 20 mm with a recess 8 mm deep. */
    private static List<Part> parts(String material, double sunk, double recess, double outer) {
        Material m = material.equals("steel") ? ReferenceSwitch.STEEL : ReferenceSwitch.ALUMINIUM;
        List<Part> parts = new ArrayList<>(ReferenceSwitch.parts());
        parts.add(new Part("wall", Role.MOUNT, new Section(recess, outer, sunk - 8 * MM, sunk), m));
        parts.add(new Part("wall 2", Role.MOUNT, new Section(9 * MM, outer, sunk - 20 * MM, sunk - 8 * MM), m));
        return parts;
    }
}
