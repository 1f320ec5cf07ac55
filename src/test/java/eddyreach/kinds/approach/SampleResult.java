package eddyreach.kinds.approach;

import eddyreach.coil.Winding;
import eddyreach.coil.Wire;
import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.CurrentPicture;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.SwitchDistance.Outcome;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.oscillator.ActiveElement;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A made-up result with the shape of a real one: exponential decay of the targets' effect, a dipole-like field. It tests
 * presentation only; no number here is physics to rely on.
 */
public final class SampleResult {

    public static final Material STEEL = new Material("steel", "mild steel", 6e6, 4e-3, 150, 0, "made up, \"quoted\"");
    static final Material STAINLESS = new Material("stainless", "austenitic stainless", 1.39e6, 1e-3, 1, 0, "made up");
    static final Material BRASS = new Material("brass", "brass", 15.9e6, 1.5e-3, 1, 0, "made up");
    static final Material ALUMINIUM = new Material("aluminium", "aluminium", 35e6, 4e-3, 1, 0, "made up");
    static final Material COPPER = new Material("copper", "copper", 58e6, 3.93e-3, 1, 0, "made up");
    static final Material FERRITE = new Material("ferrite", "ferrite", 0, 0, 1500, 20, "made up");

    private static final double L0 = 196.2e-6;
    private static final double R0 = 2.1;
    private static final double FREQUENCY = 200e3;
    private static final double C = 1 / (Math.pow(2 * Math.PI * FREQUENCY, 2) * L0);
    private static final double SR = 5e-3;

    /** A limiter whose amplitude falls linearly with the conductance. */
    public record Limiter(double current, double supply) implements ActiveElement {

        @Override
        public String name() {
            return "limiter";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(new Parameter("current", current, "A"), new Parameter("supply", supply, "V"));
        }

        @Override
        public double conductance(double amplitude) {
            return current / (amplitude + 0.1);
        }

        @Override
        public double smallSignalConductance() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double amplitude(double g) {
            return Math.max(0, current / g - 0.1);
        }
    }

    private static final Limiter ELEMENT = new Limiter(150e-6, 5);

    private SampleResult() {}

    public static ApproachResult of() {
        List<TargetResult> targets = new ArrayList<>();
        double on = conductance(R0 + 1.108, L0);
        targets.add(target(
                "steel", "mild steel 1 mm", STEEL, 1e-3, 66, 10e-6, Optional.of(new FactorBand(1, 1, "standard")), on));
        targets.add(target(
                "stainless",
                "austenitic stainless 1 mm",
                STAINLESS,
                1e-3,
                33,
                -48e-6,
                Optional.of(new FactorBand(0.6, 1, "trade")),
                on));
        targets.add(target(
                "brass", "brass 1 mm", BRASS, 1e-3, 9, -60e-6, Optional.of(new FactorBand(0.33, 0.54, "trade")), on));
        targets.add(target(
                "aluminium",
                "aluminium 1 mm",
                ALUMINIUM,
                1e-3,
                5.6,
                -63e-6,
                Optional.of(new FactorBand(0.22, 0.5, "trade")),
                on));
        targets.add(target(
                "copper",
                "copper 1 mm",
                COPPER,
                1e-3,
                4,
                -65e-6,
                Optional.of(new FactorBand(0.16, 0.46, "trade")),
                on));
        targets.add(
                target("foil", "aluminium foil 10 µm, lidding", ALUMINIUM, 10e-6, 75, -40e-6, Optional.empty(), on));
        targets.add(target("washer", "copper washer 6 mm", COPPER, 1e-3, 0.5, -8e-6, Optional.empty(), on));
        SwitchModel model = model();
        LossBudget free = budget(Double.POSITIVE_INFINITY, 0);
        return new ApproachResult(
                new StudyHeader(
                        "derating",
                        "Derating of common metals",
                        "Which factor for which metal?",
                        ApproachKind.MATERIALS,
                        model,
                        targets.get(0).target(),
                        StudyInput.defaultAccuracy(model)),
                new TrimmedSwitch(
                        C,
                        new Operating(R0, L0, FREQUENCY, conductance(R0, L0), ELEMENT.amplitude(conductance(R0, L0))),
                        on,
                        on * 0.93,
                        ELEMENT.amplitude(on),
                        ELEMENT.amplitude(on * 0.93),
                        free),
                targets,
                List.of(
                        field("without-target", Optional.empty(), model, 0),
                        field("steel", Optional.of("mild steel 1 mm"), model, 0.25),
                        field("foil", Optional.of("aluminium foil 10 µm"), model, -0.8)),
                List.of(
                        current("steel", "mild steel 1 mm at 5.00 mm", 1e-3, 38e-6),
                        current("stainless", "austenitic stainless 1 mm at 4.20 mm", 1e-3, 0.95e-3),
                        current("foil", "aluminium foil 10 µm at 5.20 mm", 10e-6, 190e-6)),
                List.of(Warning.of(Warning.Kind.PERMEABILITY_ASSUMED, "mild steel")
                        .about("mild steel")
                        .with(Warning.Measure.PERMEABILITY, 150)));
    }

    private static double conductance(double r, double l) {
        return r * C / l;
    }

    private static TargetResult target(
            String id,
            String label,
            Material material,
            double thickness,
            double loss,
            double inductance,
            Optional<FactorBand> band,
            double on) {
        int n = 61;
        double[][] c = new double[8][n];
        double switched = Double.NaN;
        double released = Double.NaN;
        for (int i = 0; i < n; i++) {
            double d = 15e-3 * i / (n - 1);
            c[0][i] = d;
            c[1][i] = loss * Math.exp(-d / 1.2e-3) - (material == COPPER ? 0.1 * Math.exp(-d / 4e-3) : 0);
            c[2][i] = inductance * Math.exp(-d / 1.6e-3);
            c[3][i] = R0 + c[1][i];
            c[4][i] = L0 + c[2][i];
            c[5][i] = 1 / (2 * Math.PI * Math.sqrt(c[4][i] * C));
            c[6][i] = conductance(c[3][i], c[4][i]);
            c[7][i] = ELEMENT.amplitude(c[6][i]);
            if (i > 0 && c[6][i - 1] >= on && c[6][i] < on) {
                switched = crossing(c[0], c[6], i, on);
            }
            if (i > 0 && c[6][i - 1] >= 0.93 * on && c[6][i] < 0.93 * on) {
                released = crossing(c[0], c[6], i, 0.93 * on);
            }
        }
        boolean switches = switched > 0;
        double factor = id.equals("steel") ? 1 : switched / SR;
        Reason reason = new Reason(
                switches ? Outcome.SWITCHES : Outcome.NEVER_ON,
                switches ? factor : Double.NaN,
                0,
                new Reason.Thick(new Reason.Metal(label, material.muReal() > 1, 0.2e-3, 0.5), thickness));
        return new TargetResult(
                new Target(
                        id,
                        label,
                        id.equals("washer") ? new Target.Outline.Disc(6e-3) : new Target.Outline.Square(18e-3),
                        List.of(new Layer(material, thickness))),
                new Curve(c[0], c[1], c[2], new double[c[0].length], c[3], c[4], c[5], c[6], c[7]),
                new SwitchDistance(
                        switches ? Outcome.SWITCHES : Outcome.NEVER_ON,
                        switched,
                        switches ? released : Double.NaN,
                        switches ? 0.004e-3 : Double.NaN,
                        switches ? 0.013e-3 : Double.NaN),
                switches ? factor : Double.NaN,
                switches ? 0.02 : Double.NaN,
                band,
                budget(switches ? switched : 0, switches ? 1.108 : 0.6),
                reason,
                id.equals("foil") ? List.of(Warning.of(Warning.Kind.SQUARE_AS_DISC, label)) : List.of());
    }

    private static double crossing(double[] x, double[] y, int i, double level) {
        return x[i - 1] + (level - y[i - 1]) / (y[i] - y[i - 1]) * (x[i] - x[i - 1]);
    }

    private static LossBudget budget(double distance, double target) {
        return new LossBudget(
                distance,
                List.of(
                        new LossBudget.Share(Role.WINDING, "winding", 1.164),
                        new LossBudget.Share(Role.CORE, "core back", 0.081),
                        new LossBudget.Share(Role.CORE, "core post", 0.11),
                        new LossBudget.Share(Role.HOUSING, "tube", 0.745),
                        new LossBudget.Share(Role.MOUNT, "none", 0),
                        new LossBudget.Share(Role.TARGET, "target", target)));
    }

    static SwitchModel model() {
        List<Part> parts = List.of(
                new Part("core post", Role.CORE, new Section(0, 3e-3, -4.8e-3, -0.6e-3), FERRITE),
                new Part("core back", Role.CORE, new Section(3e-3, 7e-3, -4.8e-3, -3.4e-3), FERRITE),
                new Part("core wall", Role.CORE, new Section(5.8e-3, 7e-3, -3.4e-3, -0.6e-3), FERRITE),
                new Part("brass tube", Role.HOUSING, new Section(8e-3, 9e-3, -12e-3, 0), BRASS));
        return new SwitchModel(
                "m18-flush",
                "M18 flush, sn 5 mm",
                "made up",
                Mounting.FLUSH,
                SR,
                SR,
                18e-3,
                FREQUENCY,
                new Winding(new Section(3.3e-3, 5.5e-3, -3.1e-3, -0.8e-3), 80, new Wire(0.1e-3, 7, COPPER)),
                parts,
                ELEMENT,
                0.05,
                eddyreach.switching.OutputFunction.NORMALLY_OPEN,
                Optional.empty());
    }

    private static FieldPicture field(String id, Optional<String> name, SwitchModel model, double image) {
        int nr = 90;
        int nz = 110;
        double[] r = new double[nr];
        double[] z = new double[nz];
        for (int i = 0; i < nr; i++) {
            r[i] = 14e-3 * i / (nr - 1);
        }
        for (int j = 0; j < nz; j++) {
            z[j] = -9e-3 + 18e-3 * j / (nz - 1);
        }
        double[][] flux = new double[nz][nr];
        double[][] strength = new double[nz][nr];
        double step = 1e-6;
        for (int j = 0; j < nz; j++) {
            for (int i = 0; i < nr; i++) {
                flux[j][i] = flux(r[i], z[j], image);
                double ri = Math.max(r[i], 1e-5);
                double k = 1 / (2 * Math.PI * Material.MU0 * ri);
                double hz = k * (flux(ri + step, z[j], image) - flux(ri - step, z[j], image)) / (2 * step);
                double hr = k * (flux(ri, z[j] + step, image) - flux(ri, z[j] - step, image)) / (2 * step);
                strength[j][i] = Math.hypot(hr, hz);
            }
        }
        List<Part> parts = new ArrayList<>(model.parts());
        if (image != 0) {
            parts.add(new Part(id, Role.TARGET, new Section(0, 10.2e-3, 5e-3, 6e-3), STEEL));
        }
        return new FieldPicture(
                id, name, r, z, flux, strength, parts, model.winding().section(), ball(id));
    }

    /** One picture has a ball, which is drawn apart from the parts. */
    private static Optional<FieldPicture.Ball> ball(String id) {
        return id.equals("foil") ? Optional.of(new FieldPicture.Ball("ball", 9e-3, 3e-3, 1)) : Optional.empty();
    }

    private static double flux(double r, double z, double image) {
        return 3e-9 * (ring(r, z + 2e-3) + image * ring(r, z - 12e-3));
    }

    private static double ring(double r, double z) {
        double a = 4e-3;
        return r * r / Math.pow(r * r + z * z + a * a, 1.5);
    }

    private static CurrentPicture current(String id, String title, double depth, double skin) {
        int nr = 60;
        int nz = 40;
        double[] r = new double[nr];
        double[] z = new double[nz];
        double[][] density = new double[nz][nr];
        for (int j = 0; j < nz; j++) {
            z[j] = depth * j / (nz - 1);
            for (int i = 0; i < nr; i++) {
                r[i] = 10.2e-3 * i / (nr - 1);
                density[j][i] = 4e9 * r[i] / Math.pow(1 + Math.pow(r[i] / 5e-3, 2), 1.5) * Math.exp(-z[j] / skin);
            }
        }
        CurrentPicture.Skin all = new CurrentPicture.Skin(id, new Section(0, 10.2e-3, 0, depth), skin);
        return new CurrentPicture(id, title, 2e5, List.of(all), r, z, density);
    }
}
