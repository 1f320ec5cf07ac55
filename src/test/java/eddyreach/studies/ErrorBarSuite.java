package eddyreach.studies;

import eddyreach.coil.Winding;
import eddyreach.coil.Wire;
import eddyreach.engine.core.Approach;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.Resolution;
import eddyreach.field.join.PlacedTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.mesh.MeshMaker.Fineness;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.Ring;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.oscillator.TanhPair;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.switching.NoTrimException;
import eddyreach.switching.OutputFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import org.apache.commons.math3.complex.Complex;

/**
 * Random switches, mounts and targets whose stated error bars are compared with the true errors against an over-refined
 * computation: a direct solve of the whole field for bounded targets, an over-refined operator joined with the exact plate for endless ones.
 */
final class ErrorBarSuite {

    /** Far finer than any step of the ladder that gives results. */
    static final Resolution REFERENCE = new Resolution(
            new Fineness(7, 0.004, 0.6, 3, 0.5, 40), new Fineness(7, 0.004, 0.6, 3, 0.5, 40), 56, 44, 1.02, false);

    /** Still far finer than the steps that are judged, at half the time. */
    static final Resolution QUICK = new Resolution(
            new Fineness(6, 0.006, 0.7, 3, 0.6, 30), new Fineness(6, 0.006, 0.7, 3, 0.6, 30), 48, 40, 1.02, false);

    /** Beside the axis no direct solve exists; finer than any step of the ladder in waves and orders, as fine in the mesh. */
    private static final Fineness BESIDE = new Fineness(6, 0.005, 0.6, 3, 0.4, 30);

    private static final int BESIDE_WAVES = 44;

    private static final double COPPER = 58e6;

    private final Random random;
    private final Resolution reference;
    private final int[] points;

    /**
     * @param seed what the case is made from
     * @param reference what the bars are held against
     * @param points points of the curve, 0 to 30, at which impedances are compared
     */
    ErrorBarSuite(long seed, Resolution reference, int... points) {
        this.reference = reference;
        this.points = points.clone();
        // neighbouring seeds must not give neighbouring numbers
        random = new Random(new SplittableRandom(seed).nextLong());
    }

    /**
     * A stated bar and the true error, in the same unit.
     *
     * @param what the case
     * @param bar stated error bar
     * @param error true error
     */
    record Pair(String what, double bar, double error) {
        boolean holds() {
            return error <= bar;
        }
    }

    private double between(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private Material metal(String name) {
        double mu = random.nextBoolean() ? 1 : Math.rint(between(1, 1000));
        return new Material(name, name, between(0.5e6, 60e6), 0, mu, 0, "random");
    }

    private static Part ring(String name, Role role, double r0, double r1, double z0, double z1, Material m) {
        return new Part(name, role, new Section(r0, r1, z0, z1), m);
    }

    /** A random switch of 5 to 80 mm, 20 kHz to 2 MHz, with or without core, tube and mount. */
    SwitchModel model(int number) {
        double d = between(5e-3, 80e-3);
        double radius = d * (0.3 + 0.15 * random.nextDouble());
        double back = d * (0.02 + 0.06 * random.nextDouble());
        double height = radius * (0.5 + 0.3 * random.nextDouble());
        double post = 0.43 * radius;
        double window = 0.83 * radius;
        double depth = 0.65 * height;
        List<Part> parts = new ArrayList<>();
        if (random.nextInt(5) > 0) {
            Material ferrite = new Material("ferrite", "ferrite", 0, 0, between(100, 2500), between(0.5, 50), "random");
            parts.add(ring("back", Role.CORE, 0, radius, -back - height, -back - depth, ferrite));
            parts.add(ring("post", Role.CORE, 0, post, -back - depth, -back, ferrite));
            parts.add(ring("rim", Role.CORE, window, radius, -back - depth, -back, ferrite));
        }
        if (random.nextInt(4) > 0) {
            double inner = radius * 1.05 + 0.2 * (d / 2 - radius);
            double front = random.nextBoolean() ? 0 : -d * (0.05 + 0.4 * random.nextDouble());
            parts.add(ring("tube", Role.HOUSING, inner, d / 2, -2 * d, front, metal("tube")));
        }
        if (random.nextInt(3) == 0) {
            double front = random.nextBoolean() ? 0 : -d * random.nextDouble() / 2;
            parts.add(ring(
                    "plate",
                    Role.MOUNT,
                    d / 2 * (1 + random.nextDouble()),
                    2 * d,
                    front - d * 0.3,
                    front,
                    metal("plate")));
        }
        Section coil = new Section(post * 1.1, window * 0.95, -back - depth * 0.92, -back - depth * 0.08);
        int turns = 20 + random.nextInt(100);
        double wire = Math.min(0.1e-3, Math.sqrt(coil.area() / turns) / 2);
        Material copper = new Material("copper", "copper", COPPER, 0, 1, 0, "test");
        double rated = radius * (0.25 + 0.5 * random.nextDouble());
        return new SwitchModel(
                "random-" + number,
                "random",
                "",
                Mounting.FLUSH,
                rated,
                rated,
                d,
                between(20e3, 2e6),
                new Winding(coil, turns, new Wire(wire, 1, copper)),
                parts,
                new TanhPair(1e-3, 1),
                0.05,
                OutputFunction.NORMALLY_OPEN,
                Optional.empty());
    }

    /** A disc or an endless plate of any metal, from 1/100 to 100 skin depths thick. */
    Target target(SwitchModel model) {
        Material m = metal("target");
        double skin = m.skinDepth(2 * Math.PI * model.frequency(), Temperature.AMBIENT);
        double thickness = Math.max(20e-9, Math.min(model.faceDiameter(), skin * between(0.01, 100)));
        Target.Outline outline = random.nextInt(4) == 0
                ? new Target.Outline.Endless()
                : new Target.Outline.Disc(model.faceDiameter() * between(0.3, 2));
        return new Target("t", "t", outline, List.of(new Layer(m, thickness)));
    }

    static Target standard(SwitchModel model) {
        Material steel = new Material("steel", "steel", 6e6, 0, 150, 0, "test");
        return new Target(
                "steel", "steel", new Target.Outline.Square(model.standardSide()), List.of(new Layer(steel, 1e-3)));
    }

    /** A disc or an endless plate beside the axis, or a ring, closed or slit, on the axis or beside it. */
    Target oddTarget(SwitchModel model) {
        double face = model.faceDiameter();
        double offset = face * between(0.1, 0.8);
        if (random.nextBoolean()) {
            return target(model).beside(offset);
        }
        Material m = metal("target");
        double outer = face * between(0.2, 0.8);
        double inner = outer * (0.2 + 0.6 * random.nextDouble());
        Ring ring =
                new Ring("ring", new Section(inner, outer, 0, face * between(0.02, 0.5)), m, random.nextInt(4) == 0);
        return new Target("t", "t", new Body.Rings(List.of(ring)), random.nextBoolean() ? offset : 0);
    }

    /** The pairs of one case: one per impedance, one for the on distance if the target switches. */
    List<Pair> pairs(int number) {
        SwitchModel model = model(number);
        return pairs(number, model, target(model));
    }

    /** The same for a target off the axis or a ring. */
    List<Pair> oddPairs(int number) {
        SwitchModel model = model(number);
        return pairs(number, model, oddTarget(model));
    }

    private List<Pair> pairs(int number, SwitchModel model, Target target) {
        Target standard = standard(model);
        ApproachInput study = new ApproachInput(
                new StudyHeader(
                        model.id(), "", "", ApproachKind.APPROACH, model, standard, StudyInput.defaultAccuracy(model)),
                List.of(target),
                Map.of(),
                0,
                3 * model.ratedDistance(),
                31,
                false);
        ResolutionLadder ladder;
        try {
            ladder = new ResolutionLadder(study.setup(), List.of(standard, target), Progress.NONE);
        } catch (NoTrimException e) {
            // a random switch may be damped more by its own mount than by the standard target
            return List.of();
        }
        Approach approach = study.approach(ladder.step(ResolutionLadder.FIRST), ladder.step(0));
        Approach.Outcome found = approach.of(target);
        SolvedSwitch solved = found.step().solved();
        String what = String.format(
                Locale.ROOT,
                "%d: d %.1f mm, %.0f kHz, %s, %.1f mm off, mu %.0f, %.1f MS/m, %.3g skins",
                number,
                model.faceDiameter() * 1e3,
                model.frequency() * 1e-3,
                target.sheet()
                        .map(s -> s.outline().toString())
                        .orElseGet(() -> target.body().toString()),
                target.offset() * 1e3,
                target.front().muReal(),
                target.front().conductivity20() * 1e-6,
                target.thickness() / target.front().skinDepth(2 * Math.PI * model.frequency(), Temperature.AMBIENT));
        List<Pair> pairs = new ArrayList<>();
        for (int i : points) {
            double g = found.curve().distance(i);
            double omega = 2 * Math.PI * found.curve().frequency(i);
            Complex reference = reference(solved, target, omega, g);
            Complex computed = solved.change(found.field(), omega, g);
            pairs.add(new Pair(
                    what + " dZ at " + g + " of " + reference,
                    found.curve().impedanceError(i),
                    computed.subtract(reference).abs()));
        }
        if (found.distance().outcome() == SwitchDistance.Outcome.SWITCHES) {
            pairs.add(distance(what, model, ladder.step(ResolutionLadder.FIRST), found, target, standard));
        }
        return pairs;
    }

    private Pair distance(
            String what,
            SwitchModel model,
            ResolutionLadder.Step step,
            Approach.Outcome found,
            Target target,
            Target standard) {
        SolvedSwitch solved = step.solved();
        PlacedTarget steel = solved.target(standard);
        double sr = model.effectiveDistance();
        double on = found.distance().on();
        TankState atTrim = solved.state(steel, sr);
        TankState here = solved.state(found.field(), on);
        double slope = (solved.state(found.field(), on * 1.001).conductance()
                        - solved.state(found.field(), on * 0.999).conductance())
                / (0.002 * on);
        double wanted = conductance(solved, standard, atTrim.omega(), sr);
        double met = conductance(solved, target, here.omega(), on);
        return new Pair(what + " on distance " + on, found.distance().onError(), Math.abs((met - wanted) / slope));
    }

    /** Loss conductance over capacitance, from the reference solution. */
    private double conductance(SolvedSwitch solved, Target target, double omega, double distance) {
        double free = solved.free().omega();
        Complex z0 = referenceFree(solved, free);
        double l0 = z0.getImaginary() / free;
        double capacitance = 1 / (l0 * (free * free + Math.pow(z0.getReal() / l0, 2)));
        Complex z = referenceFree(solved, omega).add(reference(solved, target, omega, distance));
        return z.getReal() * capacitance / (z.getImaginary() / omega);
    }

    private Complex referenceFree(SolvedSwitch solved, double omega) {
        DirectSolve solve = new DirectSolve(
                solved.model().parts(),
                solved.coil(omega),
                List.of(),
                omega,
                Temperature.AMBIENT,
                reference,
                solved.model().coreRadius());
        return solve.impedance().add(solved.windingBesideField(omega));
    }

    private Complex reference(SolvedSwitch solved, Target target, double omega, double distance) {
        if (solved.fields().endless(target)) {
            SolvedSwitch over = new SolvedSwitch(solved.model(), reference, List.of(), bytes -> {});
            return over.change(over.target(target.beside(0)), omega, distance);
        }
        if (target.offset() > 0) {
            // one end of the band lies at the frequency asked for, so that nothing is interpolated there
            double bandwidth = Math.max(1.02, omega / solved.free().omega());
            Resolution finer = new Resolution(BESIDE, BESIDE, BESIDE_WAVES, BESIDE_WAVES, bandwidth, false);
            SolvedSwitch over = new SolvedSwitch(solved.model(), finer, List.of(target), bytes -> {});
            return over.effect(over.target(target)).change(omega, distance);
        }
        List<Part> parts = target.parts().stream().map(p -> p.shifted(distance)).toList();
        return new DirectSolve(
                        solved.model().parts(),
                        solved.coil(omega),
                        parts,
                        omega,
                        Temperature.AMBIENT,
                        reference,
                        solved.model().coreRadius())
                .change();
    }
}
