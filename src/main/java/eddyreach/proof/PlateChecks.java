package eddyreach.proof;

import eddyreach.closedform.CoilOverPlate;
import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.LoopField;
import eddyreach.closedform.Loops;
import eddyreach.closedform.RectangularCoil;
import eddyreach.closedform.Reflector;
import eddyreach.closedform.ThinSheet;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.PlateTarget;
import eddyreach.geometry.Section;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.math3.complex.Complex;

/** Loops and air coils over endless plates: by the closed form, and by the field solver joined to the plate. */
final class PlateChecks {

    /** A coil of the size of a switch's. */
    static final RectangularCoil SENSOR = new RectangularCoil(2.5e-3, 5.5e-3, 2e-3, 100);

    private static final double OMEGA = 2 * Math.PI * 300e3;
    private static final double LIFT_OFF = 2e-3;
    private static final double THICKNESS = 1e-3;
    private static final double MICRO = 1e6;
    private static final double MILLI = 1e3;

    private record Plate(String name, double sigma, double mu, String dR, String dL) {}

    private static final List<Plate> PLATES = List.of(
            new Plate("copper", 58e6, 1, "0.67038066", "-9.9298103"),
            new Plate("aluminium", 37.7e6, 1, "0.82249031", "-9.8406046"),
            new Plate("brass", 15.5e6, 1, "1.2427723", "-9.5838914"),
            new Plate("austenitic stainless", 1.389e6, 1, "3.4892215", "-8.2154587"),
            new Plate("mild steel, mu_r 100", 6e6, 100, "7.2772144", "-1.9082582"));

    private PlateChecks() {}

    static List<Check> all() {
        CheckList list = new CheckList("Coil over metal");
        loops(list);
        sheets(list);
        team15(list);
        plates(list);
        return list.list();
    }

    private static void loops(CheckList list) {
        list.from(Provenance.READ, "R. E. Beissner, J. Nondestr. Eval. 7 (1988), eq. 14; the number computed from it")
                .value(
                        "loop r 25 cm, 5 cm over a perfect conductor, dL, µH",
                        "-0.337684718",
                        () -> MICRO * Loops.overPerfectConductor(0.25, 0.05))
                .from(Provenance.FORMULA, "image in a magnetic half-space, factor (mu - 1)/(mu + 1)")
                .value(
                        "loop r 25 cm, 5 cm over mu_r 10, dL, µH",
                        "0.276287497",
                        () -> MICRO
                                * loop(LayeredPlate.single(0, 10, Double.POSITIVE_INFINITY), 1)
                                        .getImaginary())
                .from(
                        Provenance.PRINTED,
                        "S. H. Ward and G. W. Hohmann, Electromagnetic theory for geophysical applications (1988),"
                                + " central-loop formula")
                .value(
                        "loop on a half-space, a/delta 1, Re Hz 2a/I",
                        "0.8635287022",
                        () -> centre(1).getReal())
                .value(
                        "loop on a half-space, a/delta 1, Im Hz 2a/I",
                        "-0.2596039597",
                        () -> centre(1).getImaginary())
                .value(
                        "loop on a half-space, a/delta 2, Re Hz 2a/I",
                        "0.4740027808",
                        () -> centre(2).getReal())
                .value(
                        "loop on a half-space, a/delta 2, Im Hz 2a/I",
                        "-0.4460084507",
                        () -> centre(2).getImaginary());
    }

    private static Complex loop(Reflector body, double omega) {
        return Loops.impedanceChange(0.25, 0.05, body, omega);
    }

    private static Complex centre(double radiusOverSkinDepth) {
        double a = 0.02;
        return LoopField.centreOnHalfSpace(a, a / radiusOverSkinDepth, 1).multiply(2 * a);
    }

    private static void sheets(CheckList list) {
        list.from(
                        Provenance.FORMULA,
                        "thin sheet: J. C. Maxwell, Treatise (1873), sections 656 to 669; W. R. Smythe (1950)")
                .value(
                        "loop over copper foil, 10 kHz, dR, mohm",
                        "0.3113030371",
                        () -> foil(10e3).getReal())
                .value(
                        "loop over copper foil, 10 kHz, dX, mohm",
                        "-0.1938780974",
                        () -> foil(10e3).getImaginary())
                .value(
                        "loop over copper foil, 100 kHz, dR, mohm",
                        "1.855103788",
                        () -> foil(100e3).getReal())
                .value(
                        "loop over copper foil, 100 kHz, dX, mohm",
                        "-7.878194334",
                        () -> foil(100e3).getImaginary());
    }

    /** Radius 10 mm, 2 mm over copper of 58 MS/m and 35 um. */
    private static Complex foil(double frequency) {
        return Loops.impedanceChange(0.01, 0.002, new ThinSheet(58e6 * 35e-6), 2 * Math.PI * frequency)
                .multiply(MILLI);
    }

    private static void team15(CheckList list) {
        Supplier<Complex> first = () -> team15(InductanceChecks.TEAM15_FIRST, 0.88e-3, 900);
        Supplier<Complex> second = () -> team15(InductanceChecks.TEAM15_SECOND, 2.03e-3, 7000);
        double omegaFirst = 2 * Math.PI * 900;
        double omegaSecond = 2 * Math.PI * 7000;
        list.from(
                        Provenance.FORMULA,
                        "C. V. Dodd and W. E. Deeds, J. Appl. Phys. 39 (1968) 2829, form for layers; plate of TEAM"
                                + " workshop problem 15")
                .value(
                        "first coil, 900 Hz, dR, ohm",
                        "120.650507",
                        () -> first.get().getReal())
                .value(
                        "first coil, 900 Hz, dL, mH",
                        "-47.3323250",
                        () -> MILLI * first.get().getImaginary() / omegaFirst)
                .value(
                        "second coil, 7 kHz, dR, ohm",
                        "5.61318551",
                        () -> second.get().getReal())
                .value(
                        "second coil, 7 kHz, dL, mH",
                        "-1.14425818",
                        () -> MILLI * second.get().getImaginary() / omegaSecond);
    }

    private static Complex team15(RectangularCoil coil, double liftOff, double frequency) {
        return CoilOverPlate.impedanceChange(
                coil, liftOff, LayeredPlate.single(30.6e6, 1, 12.22e-3), 2 * Math.PI * frequency);
    }

    private static void plates(CheckList list) {
        list.from(
                Provenance.FORMULA,
                "Dodd and Deeds (1968), form for layers: coil r 2.5/5.5 mm, 2 mm long, 100 turns, 2 mm over a plate of"
                        + " 1 mm, 300 kHz");
        for (Plate p : PLATES) {
            Supplier<Complex> change = () -> CoilOverPlate.impedanceChange(SENSOR, LIFT_OFF, layer(p), OMEGA);
            list.value(
                            p.name + ", closed form, dR, ohm",
                            p.dR,
                            () -> change.get().getReal())
                    .value(
                            p.name + ", closed form, dL, µH",
                            p.dL,
                            () -> MICRO * change.get().getImaginary() / OMEGA);
        }
        Supplier<SwitchField> field = new ComputedOnce<>(PlateChecks::meshed);
        String reason = "asked of the path over the gap with an endless plate: 1e-6";
        for (Plate p : PLATES) {
            Supplier<Complex> change = () -> joined(field.get(), layer(p));
            list.within(
                            1e-6,
                            p.name + ", field solver, dR, ohm",
                            p.dR,
                            reason,
                            () -> change.get().getReal())
                    .within(
                            1e-6,
                            p.name + ", field solver, dL, µH",
                            p.dL,
                            reason,
                            () -> MICRO * change.get().getImaginary() / OMEGA);
        }
    }

    private static LayeredPlate layer(Plate plate) {
        return LayeredPlate.single(plate.sigma, plate.mu, THICKNESS);
    }

    /** The same coil as a switch without core and housing. */
    private static SwitchField meshed() {
        Section window = new Section(SENSOR.innerRadius(), SENSOR.outerRadius(), -SENSOR.length(), 0);
        CoilRegion region = new CoilRegion(window, (int) SENSOR.turns(), 0);
        double scale = SENSOR.outerRadius();
        Resolution fine = Resolution.FINE.withoutFields();
        return new SwitchField(
                List.of(),
                omega -> region,
                WaveBasis.of(48, 40 / scale),
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                fine,
                scale);
    }

    private static Complex joined(SwitchField field, LayeredPlate plate) {
        return field.at(OMEGA).impedance(new PlateTarget(plate, field.basis()).at(OMEGA), LIFT_OFF);
    }
}
