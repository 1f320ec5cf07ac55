package eddyreach.proof;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.PartLoss;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.GapState;
import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.SwitchModel;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.math3.complex.Complex;

/** The reference switch with five targets: against an independent program, against the direct solution, energy. */
final class ReferenceSwitchChecks {

    private static final double MM = 1e-3;
    private static final double CELSIUS = 20;
    private static final double TOLERANCE = 3e-3;
    private static final String REASON = "0.3 %: the independent program is accurate to about 0.1 %";
    private static final int[] GAPS = {1, 2, 3, 5, 8};

    private final SwitchModel model = Shipped.switchModel("p14-reference");
    private final double omega = 2 * Math.PI * model.frequency();
    private final double scale = model.parts().stream()
            .filter(p -> p.role() == Role.CORE)
            .mapToDouble(p -> p.section().r1())
            .max()
            .orElseThrow();

    /** The turns as ideal: the reference values hold core, housing and target only. */
    private final CoilRegion coil =
            new CoilRegion(model.winding().section(), model.winding().turns(), 0);

    private final WaveBasis basis = Resolution.FINE.waves(scale, 0);
    private final Band band = Resolution.FINE.band(omega);
    private final Supplier<SwitchField> field = new ComputedOnce<>(
            () -> new SwitchField(model.parts(), w -> coil, basis, band, CELSIUS, Resolution.FINE, scale));

    private record Metal(String name, double sigma, double mu, String[] values) {

        Material material() {
            return new Material(name, name, sigma, 0, mu, 0, "reference values");
        }
    }

    private static final Metal STEEL =
            new Metal("steel", 6e6, 150, row("23.66 14.90 9.533 5.011 4.339 1.639 1.108 0.067 0.200 -0.076"));
    private static final Metal COPPER =
            new Metal("copper", 58e6, 1, row("1.714 -47.43 0.538 -22.50 0.085 -10.88 -0.070 -2.948 -0.033 -0.597"));
    private static final List<Metal> METALS = List.of(
            STEEL,
            new Metal("stainless", 1.39e6, 1, row("13.27 -34.48 5.969 -16.46 2.644 -8.193 0.591 -2.369 0.100 -0.505")),
            new Metal("brass", 15.9e6, 1, row("3.853 -44.96 1.558 -21.33 0.560 -10.35 0.045 -2.829 -0.012 -0.578")),
            new Metal("aluminium", 35e6, 1, row("2.411 -46.65 0.871 -22.13 0.240 -10.71 -0.033 -2.911 -0.026 -0.591")),
            COPPER);

    private static String[] row(String text) {
        return text.split(" ");
    }

    List<Check> all() {
        CheckList list = new CheckList("Reference switch P14, 200 kHz");
        list.from(
                        Provenance.INDEPENDENT,
                        "biquadratic finite elements on a graded mesh with a direct sparse solver (NumPy and SciPy)")
                .within(
                        TOLERANCE,
                        "without a target, L, µH",
                        "196.2",
                        REASON,
                        () -> 1e6 * field.get().impedance(omega).getImaginary() / omega)
                .within(
                        TOLERANCE,
                        "without a target, R of core and tube, ohm",
                        "0.936",
                        REASON,
                        () -> field.get().impedance(omega).getReal());
        for (Metal metal : METALS) {
            Supplier<BodyTarget> target = new ComputedOnce<>(() -> target(metal));
            for (int i = 0; i < GAPS.length; i++) {
                double gap = GAPS[i] * MM;
                list.within(
                        TOLERANCE,
                        metal.name + ", " + GAPS[i] + " mm, dZ, ohm",
                        metal.values[2 * i],
                        metal.values[2 * i + 1],
                        REASON + "; and half a digit",
                        () -> field.get().at(omega).impedance(target.get().at(omega), gap));
            }
        }
        laws(list);
        return list.list();
    }

    private void laws(CheckList list) {
        list.from(Provenance.LAW, "two ways to the same field: joined over the gap, and switch and target in one mesh")
                .atMost(
                        2e-3,
                        "steel, contact, difference over dZ",
                        "0.2 % is asked of the joined path",
                        () -> joinedAgainstDirect(STEEL, 0))
                .atMost(
                        2e-3,
                        "copper, 1 mm, difference over dZ",
                        "0.2 % is asked of the joined path",
                        () -> joinedAgainstDirect(COPPER, 1 * MM))
                .from(Provenance.LAW, "Poynting's theorem: Re Z is the sum of the losses by part")
                .atMost(
                        1e-6,
                        "steel, 3 mm, imbalance over dZ",
                        "both sides come from one Galerkin system",
                        () -> imbalance(STEEL, 3 * MM))
                .atMost(
                        1e-6,
                        "copper, contact, imbalance over dZ",
                        "both sides come from one Galerkin system",
                        () -> imbalance(COPPER, 0));
    }

    /** A disc of the area of an 18 mm square, 1 mm thick. */
    private static List<Part> disc(Metal metal, double gap) {
        double radius = 18 * MM / Math.sqrt(Math.PI);
        return List.of(new Part("disc", Role.TARGET, new Section(0, radius, gap, gap + MM), metal.material()));
    }

    private BodyTarget target(Metal metal) {
        return new BodyTarget(disc(metal, 0), basis, band, CELSIUS, Resolution.FINE, scale);
    }

    private double joinedAgainstDirect(Metal metal, double gap) {
        Complex joined = field.get().at(omega).impedance(target(metal).at(omega), gap);
        Complex direct =
                new DirectSolve(model.parts(), coil, disc(metal, gap), omega, CELSIUS, Resolution.FINE, scale).change();
        return joined.subtract(direct).abs() / direct.abs();
    }

    private double imbalance(Metal metal, double gap) {
        BodyTarget target = target(metal);
        GapState state = field.get().at(omega).solve(target.at(omega), gap);
        double resistance = field.get().impedance(omega).getReal() + state.dz().getReal();
        double losses = sum(field.get().solve(omega, state).losses())
                + sum(target.solve(omega, state).losses());
        return Math.abs(resistance - losses) / state.dz().abs();
    }

    private static double sum(List<PartLoss> losses) {
        return losses.stream().mapToDouble(PartLoss::resistance).sum();
    }
}
