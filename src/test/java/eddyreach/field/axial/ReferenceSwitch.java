package eddyreach.field.axial;

import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;

/** The invented switch on a half core P14 x 8 whose impedances an independent finite-element program has computed. */
public final class ReferenceSwitch {

    public static final double MM = 1e-3;
    public static final double OMEGA = 2 * Math.PI * 200e3;
    public static final double SCALE = 7 * MM;
    public static final CoilRegion COIL = new CoilRegion(new Section(3.3 * MM, 5.5 * MM, -3.1 * MM, -0.8 * MM), 80, 0);
    public static final Material STEEL = material("steel", 6e6, 150, 0);
    public static final Material STAINLESS = material("stainless", 1.39e6, 1, 0);
    public static final Material BRASS = material("brass", 15.9e6, 1, 0);
    public static final Material ALUMINIUM = material("aluminium", 35e6, 1, 0);
    public static final Material COPPER = material("copper", 58e6, 1, 0);

    private ReferenceSwitch() {}

    /** A material without temperature coefficient. */
    public static Material material(String name, double sigma, double mu, double muLoss) {
        return new Material(name, name, sigma, 0, mu, muLoss, "test");
    }

    /** Core and tube. */
    public static List<Part> parts() {
        Material ferrite = material("ferrite", 0, 1500, 20);
        Material tube = material("tube", 16e6, 1, 0);
        return List.of(
                part("back", Role.CORE, 0, 7, -4.8, -3.4, ferrite),
                part("post", Role.CORE, 0, 3, -3.4, -0.6, ferrite),
                part("wall", Role.CORE, 5.8, 7, -3.4, -0.6, ferrite),
                part("tube", Role.HOUSING, 8, 9, -40, 0, tube));
    }

    /** A disc with the area of an 18 mm square, 1 mm thick, its near face at z = gap. */
    public static List<Part> disc(Material material, double gap) {
        double radius = 18 * MM / Math.sqrt(Math.PI);
        return List.of(new Part("disc", Role.TARGET, new Section(0, radius, gap, gap + 1 * MM), material));
    }

    private static Part part(String name, Role role, double r0, double r1, double z0, double z1, Material m) {
        return new Part(name, role, new Section(r0 * MM, r1 * MM, z0 * MM, z1 * MM), m);
    }

    /** The switch's operator. */
    public static SwitchField field(Resolution resolution) {
        return new SwitchField(
                parts(),
                omega -> COIL,
                resolution.waves(SCALE, 0),
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                resolution,
                SCALE);
    }

    /** A disc's operator. */
    public static BodyTarget target(Material material, Resolution resolution) {
        return new BodyTarget(
                disc(material, 0), resolution.waves(SCALE, 0), new Band(OMEGA, 1.15 * OMEGA), 20, resolution, SCALE);
    }
}
