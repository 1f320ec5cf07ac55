package eddyreach.engine.assure;

import eddyreach.engine.assure.Assurance.Cause;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.assure.SwitchCorners.Condition;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Computes bands of assurance, see {@link Assurance}, at the rough resolution. */
public final class AssuranceFinder {

    private final SwitchCorners corners;
    private final Place place;
    private final Allowances allowances;
    private final Trim nominal;
    private final Runnable step;

    /**
     * For targets in free air.
     *
     * @param setup switch and standard target
     * @param rough the switch at 23 C with its trim
     * @param allowances what to allow for
     * @param step is run after each variant of a target
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public AssuranceFinder(Setup setup, ResolutionLadder.Step rough, Allowances allowances, Runnable step) {
        this(new SwitchCorners(setup, rough, allowances), allowances, step);
    }

    private AssuranceFinder(SwitchCorners corners, Allowances allowances, Runnable step) {
        this(corners, Place.freeAir(corners), allowances, step);
    }

    /**
     * @param corners the switch
     * @param place where it stands
     * @param allowances what to allow for
     * @param step is run after each variant
     */
    AssuranceFinder(SwitchCorners corners, Place place, Allowances allowances, Runnable step) {
        this.corners = corners;
        this.place = place;
        this.allowances = allowances;
        this.step = step;
        nominal = corners.nominal().trim();
    }

    /**
     * What stands before the switch and around it.
     *
     * @param target the target
     * @param metal what the metal of the mount is instead
     */
    private record Case(Target target, UnaryOperator<Material> metal) {

        Case of(UnaryOperator<Target> change) {
            return new Case(change.apply(target), metal);
        }

        Case in(UnaryOperator<Material> change) {
            return new Case(target, m -> change.apply(metal.apply(m)));
        }
    }

    /** The band of a target. */
    Assurance of(Target target, SwitchDistance distance) {
        return of(target, curve(new Case(target, Place.AS_STATED)), distance);
    }

    /**
     * The band of a target.
     *
     * @param target the target
     * @param plain it before the switch at 23 C
     * @param distance its distances at the fine resolution
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Assurance of(Target target, ConductanceCurve plain, SwitchDistance distance) {
        boolean defined = corners.defines(target);
        Shift shift = new Shift(distance, plain.on(nominal), plain.off(nominal), place.floor(target));
        List<Contribution> contributions = new ArrayList<>();
        contributions.add(between(Cause.SPREAD, plain, corners.pieces(), shift));
        contributions.add(between(Cause.OPERATION, plain, corners.usable(), shift));
        if (allowances.temperature()) {
            List<Double> at = corners.temperatures().stream()
                    .map(c -> before(new Case(Variants.at(target, c.celsius()), Place.AS_STATED), List.of(c))
                            .get(0)
                            .on(nominal))
                    .toList();
            contributions.add(new Contribution(
                    Cause.TEMPERATURE,
                    shift.on(lesser(at.get(0), at.get(1), shift.on())),
                    shift.on(greater(at.get(0), at.get(1), shift.on()))));
        }
        Case stated = new Case(target, Place.AS_STATED);
        List<Spread> spreads = varied(target, defined).stream()
                .map(v -> spread(stated, v, shift.on()))
                .toList();
        spreads.forEach(s -> contributions.add(s.contribution(shift)));
        Condition ambient = corners.ambient();
        Case shorter = combined(stated, spreads, c -> -never(c.on(ambient.weak())), plain);
        Case longer = combined(stated, spreads, c -> c.off(ambient.keen()), plain);
        double error = finite(distance.onError());
        contributions.add(new Contribution(Cause.NUMERICAL, distance.on() - error, distance.on() + error));
        double on = worst(
                shorter, defined, (a, b) -> Double.isNaN(a) || Double.isNaN(b) ? Double.NaN : Math.min(a, b), true);
        double off = worst(longer, defined, Math::max, false);
        return new Assurance(
                shift.assuredOn(on),
                shift.assuredOff(off),
                allowances,
                contributions,
                allowances.temperature() ? corners.temperatures().get(0).standard() : Double.NaN,
                allowances.temperature() ? corners.temperatures().get(1).standard() : Double.NaN);
    }

    private static Contribution between(Cause cause, ConductanceCurve plain, List<Trim> thresholds, Shift shift) {
        return new Contribution(cause, shift.on(plain.on(thresholds.get(0))), shift.on(plain.on(thresholds.get(1))));
    }

    /** What is varied of material and thickness: the target's unless it defines the distances, and the mount's metal. */
    private List<Varied> varied(Target target, boolean defined) {
        List<Varied> all = new ArrayList<>();
        if (!defined && Variants.assumed(target) && (allowances.material() || Variants.ranged(target))) {
            all.add(new Varied(Cause.PERMEABILITY, permeabilities(target)));
        }
        if (!allowances.material()) {
            return all;
        }
        double x = allowances.conductivity();
        if (!defined) {
            all.add(new Varied(
                    Cause.CONDUCTIVITY,
                    List.of(
                            c -> c.of(t -> Variants.conductivity(t, 1 - x)),
                            c -> c.of(t -> Variants.conductivity(t, 1 + x)))));
            thicknesses(target, all);
        }
        if (place.metals().stream().anyMatch(m -> m.conductivity20() > 0)) {
            all.add(new Varied(
                    Cause.MOUNT_CONDUCTIVITY,
                    List.of(
                            c -> c.in(m -> Variants.conducting(m, 1 - x)),
                            c -> c.in(m -> Variants.conducting(m, 1 + x)))));
        }
        if (place.metals().stream().anyMatch(Variants::assumed)) {
            all.add(new Varied(
                    Cause.MOUNT_PERMEABILITY,
                    List.of(
                            c -> c.in(m -> Variants.permeable(m, allowances::least)),
                            c -> c.in(m -> Variants.permeable(m, allowances::most)))));
        }
        return all;
    }

    /**
     * The permeabilities to try: both ends and, of a range that is stated, where the distance is largest in between if it is. What is not stated
     * as a range varies only where the material is allowed for.
     */
    private List<UnaryOperator<Case>> permeabilities(Target target) {
        List<UnaryOperator<Case>> values = new ArrayList<>(List.of(permeability(0), permeability(1)));
        if (Variants.ranged(target)) {
            Case stated = new Case(target, Place.AS_STATED);
            double[] on = IntStream.rangeClosed(0, AccuracyPolicy.PERMEABILITY_STEPS)
                    .mapToDouble(i -> curve(permeability(i / (double) AccuracyPolicy.PERMEABILITY_STEPS)
                                    .apply(stated))
                            .on(nominal))
                    .toArray();
            for (int i = 1; i < AccuracyPolicy.PERMEABILITY_STEPS; i++) {
                double left = on[i] - on[i - 1];
                double right = on[i] - on[i + 1];
                if (left * right > 0) {
                    // the vertex of the parabola through the three
                    values.add(permeability(
                            (i + (left - right) / (2 * (left + right))) / AccuracyPolicy.PERMEABILITY_STEPS));
                }
            }
        }
        return values;
    }

    /** A permeability between the lowest and the highest at even ratios, 0 to 1. */
    private UnaryOperator<Case> permeability(double share) {
        return c -> c.of(t -> Variants.permeability(
                t,
                m -> allowances.material() || m.range().isPresent()
                        ? Math.pow(allowances.least(m), 1 - share) * Math.pow(allowances.most(m), share)
                        : m.muReal()));
    }

    /** Of each layer but those so thick that the field ends in them. */
    private void thicknesses(Target target, List<Varied> all) {
        List<Layer> layers = target.layers();
        double omega = corners.nominal().solved().free().omega();
        for (int i = 0; i < target.tolerances().size(); i++) {
            Layer layer = layers.get(i);
            double share = target.tolerances().get(i).share();
            int index = i;
            boolean deep = layer.thickness()
                    > AccuracyPolicy.DEEP_LAYER * layer.material().skinDepth(omega, Temperature.AMBIENT);
            all.add(new Varied(
                    Cause.THICKNESS,
                    layers.size() > 1 ? layer.material().name() : "",
                    deep || share == 0
                            ? List.of()
                            : List.of(
                                    c -> c.of(t -> Variants.layer(t, index, 1 - share)),
                                    c -> c.of(t -> Variants.layer(t, index, 1 + share)))));
        }
    }

    /** The worst distance of a target: at the limits of s_u, and at each temperature at those limits and with the switch itself cold or hot. */
    private double worst(Case found, boolean defined, BinaryOperator<Double> worse, boolean on) {
        List<Double> all = new ArrayList<>();
        Condition ambient = corners.ambient();
        // the limits of s_u hold for the standard target whatever its temperature
        if (defined || !allowances.temperature()) {
            all.add(distance(curve(found), ambient, on));
        }
        for (Condition c : corners.temperatures()) {
            Case warm = found.of(t -> Variants.at(t, c.celsius()));
            List<Condition> at = defined ? List.of(c) : List.of(ambient, c);
            List<ConductanceCurve> curves = before(warm, at);
            for (int i = 0; i < at.size(); i++) {
                all.add(distance(curves.get(i), at.get(i), on));
            }
        }
        return all.stream().reduce(worse).orElseThrow();
    }

    private static double distance(ConductanceCurve curve, Condition c, boolean on) {
        return on ? curve.steadyOn(c.weak()) : curve.off(c.keen());
    }

    private ConductanceCurve curve(Case found) {
        return before(found, List.of(corners.ambient())).get(0);
    }

    private List<ConductanceCurve> before(Case found, List<Condition> conditions) {
        List<ConductanceCurve> curves = place.before(found.target(), conditions, found.metal());
        curves.forEach(c -> step.run());
        return curves;
    }

    /** A property at the values that it may have beside the stated one. */
    private record Varied(Cause cause, String about, List<UnaryOperator<Case>> values) {

        Varied(Cause cause, List<UnaryOperator<Case>> values) {
            this(cause, "", values);
        }
    }

    /** What a property does alone: a curve for each of its values, and the distances with the stated thresholds. */
    private record Spread(Varied varied, List<ConductanceCurve> curves, double shortest, double longest) {

        Contribution contribution(Shift shift) {
            return new Contribution(varied.cause(), varied.about(), shift.on(shortest), shift.on(longest));
        }

        /** True for a mount's metal that hardly matters alone: it does not matter more for other targets either. */
        boolean negligible(double ratedDistance) {
            boolean mount = varied.cause() == Cause.MOUNT_CONDUCTIVITY || varied.cause() == Cause.MOUNT_PERMEABILITY;
            return mount && width() < AccuracyPolicy.MOUNT_NEGLIGIBLE * ratedDistance;
        }

        double width() {
            double width = longest - shortest;
            return Double.isNaN(width) ? Double.POSITIVE_INFINITY : width;
        }
    }

    /** Both ends may lie on one side of the nominal distance: near a maximum of the loss. */
    private Spread spread(Case stated, Varied varied, double on) {
        List<ConductanceCurve> curves =
                varied.values().stream().map(v -> curve(v.apply(stated))).toList();
        double shortest = on;
        double longest = on;
        for (ConductanceCurve c : curves) {
            double found = c.on(nominal);
            shortest = Math.min(shortest, found);
            longest = greater(longest, found, Double.NaN);
        }
        return new Spread(varied, curves, shortest, longest);
    }

    /**
     * The values of all properties that together score highest: that which matters most is chosen first, each further one with those before
     * in place, since what one does may turn with another (a fifth of conductivity counts little for steel of mu_r 150, but not at 50).
     */
    private Case combined(
            Case stated, List<Spread> spreads, ToDoubleFunction<ConductanceCurve> score, ConductanceCurve plain) {
        Case best = stated;
        double highest = score.applyAsDouble(plain);
        List<Spread> ranked = spreads.stream()
                .filter(s -> !s.negligible(corners.nominal().solved().model().ratedDistance()))
                .sorted(Comparator.comparingDouble(Spread::width).reversed())
                .toList();
        for (Spread s : ranked) {
            Case before = best;
            for (int i = 0; i < s.curves().size(); i++) {
                Case tried = s.varied().values().get(i).apply(before);
                ConductanceCurve curve = before == stated ? s.curves().get(i) : curve(tried);
                double found = score.applyAsDouble(curve);
                if (found > highest) {
                    highest = found;
                    best = tried;
                }
            }
        }
        return best;
    }

    /** Never to switch on counts as the shortest distance. */
    private static double never(double on) {
        return Double.isNaN(on) ? Double.NEGATIVE_INFINITY : on;
    }

    /** Never to switch on counts as the shortest distance. */
    private static double lesser(double a, double b, double c) {
        return Math.min(a, Math.min(b, c));
    }

    private static double greater(double a, double b, double c) {
        return DoubleStream.of(a, b, c).filter(d -> !Double.isNaN(d)).max().orElse(Double.NaN);
    }

    private static double finite(double error) {
        return Double.isFinite(error) ? error : 0;
    }

    /**
     * Carries deviations at the rough resolution over to the distances of the fine one.
     *
     * @param fine what was found
     * @param on the nominal on distance at the rough resolution, m
     * @param off the nominal off distance at the rough resolution, m
     * @param floor least distance that the target can have, m
     */
    private record Shift(SwitchDistance fine, double on, double off, double floor) {

        double on(double rough) {
            return Double.isFinite(fine.on()) && Double.isFinite(on)
                    ? Math.max(floor, fine.on() + (rough - on))
                    : rough;
        }

        double assuredOn(double rough) {
            double distance = on(rough) - finite(fine.onError());
            return distance > floor ? distance : Double.NaN;
        }

        double assuredOff(double rough) {
            if (rough == 0) {
                return 0;
            }
            boolean known = Double.isFinite(fine.off()) && Double.isFinite(off);
            return (known ? fine.off() + (rough - off) : rough) + finite(fine.offError());
        }
    }
}
