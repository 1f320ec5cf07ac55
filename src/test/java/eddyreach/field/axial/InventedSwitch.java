package eddyreach.field.axial;

import static eddyreach.field.axial.ReferenceSwitch.MM;

import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;

/**
 * Three invented switches of different size and kind, each with the disc and the distances that suit it.
 *
 * @param name what it is
 * @param parts core and housing
 * @param coil the winding
 * @param scale radius of the core, m
 * @param omega angular frequency, rad/s
 * @param radius radius of the target, m
 * @param thickness thickness of the target, m
 * @param gaps distances, m, from contact to beyond the rated one
 */
public record InventedSwitch(
        String name,
        List<Part> parts,
        CoilRegion coil,
        double scale,
        double omega,
        double radius,
        double thickness,
        double[] gaps) {

    private static final double CELSIUS = 20;

    /** The reference switch: flush, brass tube, 200 kHz. */
    public static InventedSwitch medium() {
        return new InventedSwitch(
                "medium",
                ReferenceSwitch.parts(),
                ReferenceSwitch.COIL,
                ReferenceSwitch.SCALE,
                ReferenceSwitch.OMEGA,
                18 * MM / Math.sqrt(Math.PI),
                1 * MM,
                new double[] {0, 0.5 * MM, 1 * MM, 3 * MM, 8 * MM});
    }

    /** Small and flush in a steel tube, whose skin depth is 27 um at 600 kHz. */
    public static InventedSwitch small() {
        Material ferrite = ReferenceSwitch.material("ferrite", 0, 900, 15);
        Material steel = ReferenceSwitch.material("tube", 6e6, 100, 0);
        return new InventedSwitch(
                "small",
                List.of(
                        part("back", Role.CORE, 0, 2.6, -2.6, -1.9, ferrite),
                        part("post", Role.CORE, 0, 1.1, -1.9, -0.3, ferrite),
                        part("wall", Role.CORE, 2.15, 2.6, -1.9, -0.3, ferrite),
                        part("tube", Role.HOUSING, 2.9, 3.7, -20, 0, steel)),
                new CoilRegion(new Section(1.2 * MM, 2.05 * MM, -1.75 * MM, -0.45 * MM), 45, 0),
                2.6 * MM,
                2 * Math.PI * 600e3,
                8 * MM / Math.sqrt(Math.PI),
                1 * MM,
                new double[] {0, 0.2 * MM, 0.5 * MM, 1.5 * MM, 3 * MM});
    }

    /** Large and not flush, without a tube, with a lossy winding, 100 kHz. */
    public static InventedSwitch large() {
        Material ferrite = ReferenceSwitch.material("ferrite", 0, 2000, 12);
        return new InventedSwitch(
                "large",
                List.of(
                        part("back", Role.CORE, 0, 15, -10, -7, ferrite),
                        part("post", Role.CORE, 0, 6.5, -7, -0.8, ferrite),
                        part("wall", Role.CORE, 12.5, 15, -7, -0.8, ferrite)),
                new CoilRegion(new Section(7 * MM, 12 * MM, -6.5 * MM, -1.2 * MM), 110, 0.004),
                15 * MM,
                2 * Math.PI * 100e3,
                45 * MM / Math.sqrt(Math.PI),
                1 * MM,
                new double[] {0, 1 * MM, 3 * MM, 8 * MM, 15 * MM});
    }

    private static Part part(String name, Role role, double r0, double r1, double z0, double z1, Material m) {
        return new Part(name, role, new Section(r0 * MM, r1 * MM, z0 * MM, z1 * MM), m);
    }

    List<Part> disc(Material material, double gap) {
        return List.of(new Part("disc", Role.TARGET, new Section(0, radius, gap, gap + thickness), material));
    }

    public SwitchField field(Resolution resolution) {
        return new SwitchField(
                parts,
                w -> coil,
                resolution.waves(scale, 0),
                new Band(omega, 1.15 * omega),
                CELSIUS,
                resolution,
                scale);
    }

    public BodyTarget target(Material material, Resolution resolution) {
        return new BodyTarget(
                disc(material, 0),
                resolution.waves(scale, 0),
                new Band(omega, 1.15 * omega),
                CELSIUS,
                resolution,
                scale);
    }

    public DirectSolve direct(Material material, double gap, Resolution resolution) {
        return new DirectSolve(parts, coil, disc(material, gap), omega, CELSIUS, resolution, scale);
    }
}
