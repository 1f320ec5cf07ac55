package eddyreach.proof;

import eddyreach.closedform.CoilInductance;
import eddyreach.closedform.CylinderInField;
import eddyreach.closedform.SmallBodies;
import eddyreach.closedform.SphereInField;
import eddyreach.coil.RoundConductor;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.Reflection;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.List;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.complex.Complex;

/** Sphere, cylinder, round wire and disc in a uniform field. */
final class BodyChecks {

    private BodyChecks() {}

    static List<Check> all() {
        CheckList list = new CheckList("Bodies in a field");
        sphere(list);
        cylinder(list);
        disc(list);
        return list.list();
    }

    private static void sphere(CheckList list) {
        DoubleFunction<Complex> d = SphereInField::momentFactor;
        list.from(
                        Provenance.FORMULA,
                        "sphere: L. D. Landau and E. M. Lifshitz, Electrodynamics of Continuous Media, section 59")
                .value("Re D at a/delta 1", "-0.0244111284", () -> d.apply(1).getReal())
                .value("Im D at a/delta 1", "-0.128453557", () -> d.apply(1).getImaginary())
                .value("Re D at a/delta 5", "-0.700008038", () -> d.apply(5).getReal())
                .value("Im D at a/delta 5", "-0.239962326", () -> d.apply(5).getImaginary())
                .value(
                        "loss part at its top, a/delta 2.4092229",
                        "0.355145610",
                        () -> -d.apply(2.4092229).getImaginary());
    }

    private static void cylinder(CheckList list) {
        DoubleFunction<Complex> mu = CylinderInField::effectivePermeability;
        list.from(Provenance.PRINTED, "F. Foerster and K. Stambke, Z. Metallkunde 45 (1954) 166: cylinder")
                .value("Re mu_eff at f/fg 10", "0.4678", () -> mu.apply(10).getReal())
                .value("Im mu_eff at f/fg 10", "-0.3494", () -> mu.apply(10).getImaginary())
                .value("Re mu_eff at f/fg 100", "0.1416", () -> mu.apply(100).getReal())
                .value(
                        "Im mu_eff at f/fg 100",
                        "-0.1313",
                        6e-5,
                        "the exact value is -0.131248, so the last printed digit is good to one unit only",
                        () -> mu.apply(100).getImaginary())
                .from(
                        Provenance.PRINTED,
                        "NBS Circular 74 (1937) and F. E. Terman, Radio Engineers' Handbook (1943): round wire")
                .value("Rac/Rdc at x 1", "1.0052", () -> RoundConductor.skinFactor(1))
                .value("Rac/Rdc at x 2", "1.0782", () -> RoundConductor.skinFactor(2))
                .value(
                        "Rac/Rdc at x 5",
                        "2.0430",
                        3e-4,
                        "the printed value lies 2.8e-4 above the exact 2.042725 of the same formula",
                        () -> RoundConductor.skinFactor(5))
                .value("Rac/Rdc at x 10", "3.799", () -> RoundConductor.skinFactor(10))
                .value("proximity factor G at x 2", "0.1724", () -> RoundConductor.proximityFactor(2))
                .from(
                        Provenance.PRINTED,
                        "R. I. Joseph, J. Appl. Phys. 37 (1966) 4639; D.-X. Chen, J. A. Brug and R. B. Goldfarb, IEEE"
                                + " Trans. Magn. 27 (1991) 3601: cylinder, susceptibility to 0")
                .value("demagnetising factor at length/diameter 1", "0.3116", () -> 1 - CoilInductance.nagaoka(1))
                .value(
                        "the same factor by the field solver",
                        "0.3116",
                        1e-4,
                        "mesh and outer boundary of the finite elements",
                        BodyChecks::demagnetising)
                .from(Provenance.PRINTED, "J. A. Osborn, Phys. Rev. 67 (1945) 351: ellipsoid")
                .value("length/diameter 2", "0.1736", () -> SmallBodies.ellipsoidDemagnetising(2))
                .value("length/diameter 5", "0.0558", () -> SmallBodies.ellipsoidDemagnetising(5))
                .value("length/diameter 10", "0.0203", () -> SmallBodies.ellipsoidDemagnetising(10));
    }

    private static void disc(CheckList list) {
        list.from(
                        Provenance.PRINTED,
                        "Landau and Lifshitz, Electrodynamics of Continuous Media: thin perfectly conducting disc")
                .value(
                        "moment/(a³ H0) by the field solver, -8/3",
                        "-2.6667",
                        3e-3,
                        "thickness a/10000 and shielding number 1e5 instead of the limits",
                        BodyChecks::discMoment);
    }

    private static double discMoment() {
        double height = 1e-4;
        // at a shielding number w mu0 sigma t a of 1e5 the currents are inductive everywhere but at the very rim
        return polarisability(height, 1e5 / height, 1, new Fineness(5, 1e-4, 0.7, 3, 0.6, 40));
    }

    /** N from alpha = V chi / (1 + N chi). */
    private static double demagnetising() {
        double chi = 1e-3;
        double alpha = polarisability(2, 0, 1 + chi, new Fineness(5, 0.02, 1, 3, 0.6, 40));
        return (2 * Math.PI * chi / alpha - 1) / chi;
    }

    /**
     * Polarisability m/H0 over a^3 of a cylinder of radius a in a wave J1(kr) exp(-kz) much longer than itself, which is a uniform
     * axial field: T(k, k) = k^2 m/(4 pi H0) exp(-k height).
     *
     * @param height height over a
     * @param shielding w mu0 sigma a^2
     */
    private static double polarisability(double height, double shielding, double mu, Fineness fine) {
        double a = 0.01;
        double k = 1e-5 / a;
        double omega = 2 * Math.PI * 1e5;
        double sigma = shielding / (omega * Material.MU0 * a * a);
        Material material = new Material("body", "body", sigma, 0, mu, 0, "limit case");
        Part body = new Part("body", Role.TARGET, new Section(0, a, 0, height * a), material);
        WaveBasis one = new WaveBasis(new double[] {k}, new double[] {1});
        BodyTarget target = new BodyTarget(
                List.of(body),
                one,
                new Band(omega, 1.15 * omega),
                20,
                new Resolution(fine, fine, 1, 1, 1.15, false),
                a);
        Reflection.Full t = (Reflection.Full) target.at(omega);
        return t.re()[0] * 4 * Math.PI * Math.exp(k * height * a) / (k * k * a * a * a);
    }
}
