package eddyreach.engine.assure;

import eddyreach.engine.assure.Assurance.Cause;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Trim;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/** Computes bands of assurance, see {@link Assurance}, at the rough resolution. */
public final class AssuranceFinder {

    /** A piece may have next to no differential travel: its off threshold is this share of its on threshold. */
    private static final double NO_TRAVEL = 1 - 1e-9;

    private final Target standard;
    private final Allowances allowances;
    private final ResolutionLadder.Step nominal;
    private final Runnable step;
    private final Condition ambient;
    private final List<Condition> temperatures;
    private final Trim pieceShort;
    private final Trim pieceLong;
    private final Trim usableShort;
    private final Trim usableLong;

    /**
     * A switch at one temperature.
     *
     * @param solved the switch
     * @param celsius its temperature and the target's, degrees Celsius
     * @param weak thresholds of a piece with the shortest distances allowed
     * @param keen thresholds of a piece with the longest distances allowed
     * @param standard where the standard target switches on with the nominal thresholds, m
     */
    private record Condition(SolvedSwitch solved, double celsius, Trim weak, Trim keen, double standard) {}

    /**
     * @param setup switch and standard target
     * @param rough the switch at 23 C with its trim
     * @param allowances what to allow for
     * @param step is run after each variant of a target
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public AssuranceFinder(Setup setup, ResolutionLadder.Step rough, Allowances allowances, Runnable step) {
        this.step = step;
        standard = setup.standard();
        nominal = rough;
        this.allowances = allowances;
        SwitchModel model = setup.switchModel();
        double shortest = (1 - allowances.effective()) * model.ratedDistance();
        double longest = (1 + allowances.effective()) * model.ratedDistance();
        double travel = allowances.differentialTravel() * longest;
        double least = (1 - allowances.usable()) * shortest;
        double most = (1 + allowances.usable()) * longest;
        ConductanceCurve trimmed = new ConductanceCurve(rough.solved(), rough.field(standard));
        pieceShort = weak(trimmed.conductance(shortest));
        pieceLong = keen(trimmed.conductance(longest), trimmed.conductance(longest + travel));
        double sr = model.effectiveDistance();
        usableShort = weak(trimmed.conductance((1 - allowances.usable()) * sr));
        usableLong = weak(trimmed.conductance((1 + allowances.usable()) * sr));
        ambient = new Condition(
                rough.solved(),
                Temperature.AMBIENT,
                weak(trimmed.conductance(least)),
                keen(trimmed.conductance(most), trimmed.conductance(most + travel)),
                trimmed.on(rough.trim()));
        temperatures = allowances.temperature()
                ? List.of(
                        condition(allowances.coldest(), least, most, travel),
                        condition(allowances.hottest(), least, most, travel))
                : List.of();
    }

    private static Trim weak(double on) {
        return new Trim(on, NO_TRAVEL * on);
    }

    /** The standard target's curve may be level out there. */
    private static Trim keen(double on, double off) {
        return new Trim(on, Math.min(off, NO_TRAVEL * on));
    }

    /** The thresholds are kept from the trim at 23 C as long as the standard target stays within the limits of s_u. */
    private Condition condition(double celsius, double least, double most, double travel) {
        SolvedSwitch solved = nominal.solved().at(celsius);
        ConductanceCurve curve = ConductanceCurve.of(solved, Variants.at(standard, celsius));
        double on = Math.max(pieceLong.on(), curve.conductance(most));
        double off = Math.max(pieceLong.off(), curve.conductance(most + travel));
        return new Condition(
                solved,
                celsius,
                weak(Math.min(pieceShort.on(), curve.conductance(least))),
                keen(on, off),
                curve.on(nominal.trim()));
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
        boolean defined = target.actsAs(standard);
        Shift shift = new Shift(distance, plain.on(nominal.trim()), plain.off(nominal.trim()));
        List<Contribution> contributions = new ArrayList<>();
        contributions.add(new Contribution(
                Cause.SPREAD, shift.on(plain.on(pieceShort)), shift.on(plain.on(weak(pieceLong.on())))));
        contributions.add(
                new Contribution(Cause.OPERATION, shift.on(plain.on(usableShort)), shift.on(plain.on(usableLong))));
        if (allowances.temperature()) {
            List<Double> at = temperatures.stream()
                    .map(c -> curve(c.solved(), field(target, c)).on(nominal.trim()))
                    .toList();
            contributions.add(new Contribution(
                    Cause.TEMPERATURE,
                    shift.on(lesser(at.get(0), at.get(1), shift.on())),
                    shift.on(greater(at.get(0), at.get(1), shift.on()))));
        }
        Target shorter = target;
        Target longer = target;
        if (!defined && allowances.material()) {
            double x = allowances.conductivity();
            Ends ends = new Ends(t -> Variants.conductivity(t, 1 - x), t -> Variants.conductivity(t, 1 + x));
            Spread spread = spread(target, shift.on(), ends);
            contributions.add(spread.contribution(Cause.CONDUCTIVITY, shift));
            shorter = spread.shorten().apply(shorter);
            longer = spread.lengthen().apply(longer);
            if (Variants.assumed(target)) {
                ends = new Ends(
                        t -> Variants.permeability(t, allowances::least),
                        t -> Variants.permeability(t, allowances::most));
                spread = spread(target, shift.on(), ends);
                contributions.add(spread.contribution(Cause.PERMEABILITY, shift));
                shorter = spread.shorten().apply(shorter);
                longer = spread.lengthen().apply(longer);
            }
        }
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
                allowances.temperature() ? temperatures.get(0).standard() : Double.NaN,
                allowances.temperature() ? temperatures.get(1).standard() : Double.NaN);
    }

    /** The target before a switch at the temperature of a condition; the waves are those of the nominal switch. */
    private ConductanceCurve curve(SolvedSwitch solved, PlacedTarget field) {
        ConductanceCurve curve = new ConductanceCurve(solved, field);
        step.run();
        return curve;
    }

    private PlacedTarget field(Target target, Condition c) {
        return nominal.solved().target(Variants.at(target, c.celsius()));
    }

    /** The worst distance of a target: at the limits of s_u, and at each temperature at those limits and with the switch itself cold or hot. */
    private double worst(Target target, boolean defined, BinaryOperator<Double> worse, boolean on) {
        List<Double> all = new ArrayList<>();
        // the limits of s_u hold for the standard target whatever its temperature
        if (defined || !allowances.temperature()) {
            all.add(distance(curve(target), ambient, on));
        }
        for (Condition c : temperatures) {
            PlacedTarget field = field(target, c);
            if (!defined) {
                all.add(distance(curve(ambient.solved(), field), ambient, on));
            }
            all.add(distance(curve(c.solved(), field), c, on));
        }
        return all.stream().reduce(worse).orElseThrow();
    }

    private static double distance(ConductanceCurve curve, Condition c, boolean on) {
        return on ? curve.steadyOn(c.weak()) : curve.off(c.keen());
    }

    private ConductanceCurve curve(Target target) {
        return curve(nominal.solved(), nominal.field(target));
    }

    /** A property of the target at its lowest and at its highest. */
    private record Ends(UnaryOperator<Target> low, UnaryOperator<Target> high) {}

    /** What makes the distance shortest and longest: the lowest, the nominal or the highest value, and the distances then. */
    private record Spread(
            UnaryOperator<Target> shorten, double shortest, UnaryOperator<Target> lengthen, double longest) {

        Contribution contribution(Cause cause, Shift shift) {
            return new Contribution(cause, shift.on(shortest), shift.on(longest));
        }
    }

    /** Both ends may lie on one side of the nominal distance: near a maximum of the loss. */
    private Spread spread(Target target, double on, Ends ends) {
        double low = curve(ends.low().apply(target)).on(nominal.trim());
        double high = curve(ends.high().apply(target)).on(nominal.trim());
        double shortest = lesser(low, high, on);
        double longest = greater(low, high, on);
        return new Spread(
                same(shortest, low) ? ends.low() : same(shortest, high) ? ends.high() : UnaryOperator.identity(),
                shortest,
                same(longest, low) ? ends.low() : same(longest, high) ? ends.high() : UnaryOperator.identity(),
                longest);
    }

    private static boolean same(double a, double b) {
        return Double.compare(a, b) == 0;
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
     */
    private record Shift(SwitchDistance fine, double on, double off) {

        double on(double rough) {
            return Double.isFinite(fine.on()) && Double.isFinite(on) ? Math.max(0, fine.on() + (rough - on)) : rough;
        }

        double assuredOn(double rough) {
            double distance = on(rough) - finite(fine.onError());
            return distance > 0 ? distance : Double.NaN;
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
