package eddyreach.study;

import eddyreach.closedform.LayeredPlate;
import eddyreach.coil.WindingResistance;
import eddyreach.field.Band;
import eddyreach.field.BesideTarget;
import eddyreach.field.BodyTarget;
import eddyreach.field.CoilRegion;
import eddyreach.field.GapState;
import eddyreach.field.PlateTarget;
import eddyreach.field.Reflection;
import eddyreach.field.Resolution;
import eddyreach.field.Shifted;
import eddyreach.field.SphereTarget;
import eddyreach.field.SwitchField;
import eddyreach.field.TargetField;
import eddyreach.field.WaveBasis;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.Body;
import eddyreach.model.SwitchModel;
import eddyreach.model.Target;
import eddyreach.oscillator.Tank;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.LongConsumer;
import org.apache.commons.math3.complex.Complex;

/**
 * One switch with its field operators and its tank, at one resolution: everything that is needed to put targets in front of it.
 *
 * <p>The oscillator follows the inductance: at each distance the frequency is iterated until impedance and resonance agree.
 */
final class Bench {

    /** Ambient temperature of trim and test, degrees Celsius (IEC 60947-5-2: 23 +- 5): that of a bench unless {@link #at} makes another. */
    static final double AMBIENT = 23;

    /** Radius in radii of the core from which a target is computed as endless: a foil's loss changes by less than 1 % there. */
    static final double ENDLESS = 6;

    private static final int MAX_ITERATIONS = 30;
    private static final double FREQUENCY_TOLERANCE = 1e-7;

    private final SwitchModel model;
    private final Resolution resolution;
    private final double celsius;
    private final double scale;
    private final WaveBasis basis;
    private final Band band;
    private final WindingResistance winding;
    private final SwitchField field;
    private final Tank tank;
    private final State free;

    /**
     * The tank with a target at one distance.
     *
     * @param omega angular frequency of the oscillation, rad/s
     * @param impedance impedance of the coil with everything around it, ohm
     * @param change change of the impedance by the target, ohm
     * @param conductance loss conductance of the tank at resonance, S
     */
    record State(double omega, Complex impedance, Complex change, double conductance) {

        double resistance() {
            return impedance.getReal();
        }

        double inductance() {
            return impedance.getImaginary() / omega;
        }
    }

    /**
     * @param model the switch
     * @param resolution how fine
     * @param targets the targets that will be put before it
     * @param memory is told the most memory that solving may take, bytes, before it begins
     */
    Bench(SwitchModel model, Resolution resolution, List<Target> targets, LongConsumer memory) {
        this.model = model;
        this.resolution = resolution;
        celsius = AMBIENT;
        scale = scale(model);
        double widest = targets.stream().mapToDouble(this::width).max().orElse(0);
        double farthest = targets.stream().mapToDouble(Target::offset).max().orElse(0);
        basis = resolution.waves(scale, widest, farthest);
        double omega = 2 * Math.PI * model.frequency();
        band = resolution.band(omega);
        winding = new WindingResistance(model.winding());
        SwitchField.Prepared prepared = prepared();
        memory.accept(prepared.memory());
        field = prepared.solve();
        Complex z = impedance(omega);
        tank = Tank.forFrequency(z.getImaginary() / omega, z.getReal(), model.frequency());
        free = new State(omega, z, Complex.ZERO, tank.conductance(z.getImaginary() / omega, z.getReal()));
    }

    /** The same switch with the same capacitor, its winding, core and housing at another temperature, degrees Celsius. */
    private Bench(Bench other, double celsius) {
        model = other.model;
        resolution = other.resolution;
        this.celsius = celsius;
        scale = other.scale;
        basis = other.basis;
        band = other.band;
        winding = other.winding;
        field = prepared().solve();
        tank = other.tank;
        free = settled(other.free.omega(), omega -> Complex.ZERO, Double.POSITIVE_INFINITY);
    }

    /** This switch at another temperature, degrees Celsius; the capacitor stays as it is. */
    Bench at(double celsius) {
        return new Bench(this, celsius);
    }

    private SwitchField.Prepared prepared() {
        return new SwitchField.Prepared(model.parts(), this::coil, basis, band, celsius, resolution, scale);
    }

    /** Radius of the core, or of the winding when there is none: the length that sets the scale of the field, m. */
    static double scale(SwitchModel model) {
        return model.parts().stream()
                .filter(p -> p.role() == Role.CORE)
                .mapToDouble(p -> p.section().r1())
                .max()
                .orElse(model.winding().section().r1());
    }

    /** The winding as the field sees it at an angular frequency. */
    CoilRegion coil(double omega) {
        return new CoilRegion(model.winding().section(), model.winding().turns(), winding.muLoss(omega, celsius));
    }

    private Complex impedance(double omega) {
        return field.impedance(omega).add(winding.besideField(omega, celsius));
    }

    SwitchModel model() {
        return model;
    }

    SwitchField field() {
        return field;
    }

    double capacitance() {
        return tank.capacitance();
    }

    /** The tank without a target. */
    State free() {
        return free;
    }

    /** The winding's loss beside the part that the field carries, ohm. */
    double windingBesideField(double omega) {
        return winding.besideField(omega, celsius);
    }

    /** Radius of the disc whose operator needs as many waves as a target's, m; 0 when they serve as they are. */
    private double width(Target target) {
        if (target.body() instanceof Body.Ball ball) {
            // its ridge along k = k' is about sqrt(2k/a) wide, a disc's 1/radius; so taken, 100 mm before a core of 7
            // mm is right to 1e-8
            return Math.sqrt(scale * ball.radius());
        }
        return endless(target) ? 0 : Math.min(target.radius(), ENDLESS * scale);
    }

    /** The field problem of a target. */
    TargetField target(Target target) {
        return target(target, resolution);
    }

    /** The field problem of a target of which only the reflection is asked, at half the cost: not its fields and losses. */
    TargetField reflector(Target target) {
        return target(target, resolution.withoutFields());
    }

    private TargetField target(Target target, Resolution resolution) {
        TargetField own = about(target, resolution);
        return target.offset() > 0 ? new BesideTarget(own, target.offset()) : own;
    }

    /** The field problem about the target's own axis. */
    private TargetField about(Target target, Resolution resolution) {
        if (target.withoutEffect()) {
            return omega -> new Reflection.Diagonal(new double[basis.size()], new double[basis.size()]);
        }
        if (endless(target)) {
            return new PlateTarget(plate(target, celsius), basis);
        }
        if (target.body() instanceof Body.Ball ball) {
            return new SphereTarget(target.id(), ball.radius(), ball.material(), basis, celsius);
        }
        List<Part> parts = within(target);
        if (parts.stream().noneMatch(p -> p.material().hasEffect())) {
            return omega -> new Reflection.Diagonal(new double[basis.size()], new double[basis.size()]);
        }
        return new BodyTarget(parts, basis, band, celsius, resolution, scale);
    }

    /** True when a sheet is endless or so wide that its edge does not matter. */
    boolean endless(Target target) {
        return target.body() instanceof Body.Sheet && wide(target.radius());
    }

    /** True for a radius, m, from which on a target's edge does not matter. */
    boolean wide(double radius) {
        return radius > ENDLESS * scale;
    }

    /** True when a body of rings reaches so far out that it is cut off where it does not matter. */
    boolean cut(Target target) {
        return target.body() instanceof Body.Rings && target.radius() > ENDLESS * scale;
    }

    /** Radius up to which a bounded target is computed, m. */
    double reach(Target target) {
        return cut(target) ? ENDLESS * scale : target.radius();
    }

    private List<Part> within(Target target) {
        double most = ENDLESS * scale;
        return target.parts().stream()
                .filter(p -> p.section().r0() < most)
                .map(p -> {
                    Section s = p.section();
                    Section kept = new Section(s.r0(), Math.min(most, s.r1()), s.z0(), s.z1());
                    return new Part(p.name(), p.role(), kept, p.material(), p.slit());
                })
                .toList();
    }

    /** The layers of a sheet at a temperature, degrees Celsius. */
    static LayeredPlate plate(Target target, double celsius) {
        int n = target.layers().size();
        double[] sigma = new double[n];
        double[] muRe = new double[n];
        double[] muIm = new double[n];
        double[] thickness = new double[n];
        for (int i = 0; i < n; i++) {
            var layer = target.layers().get(i);
            sigma[i] = layer.material().conductivity(celsius);
            muRe[i] = layer.material().muReal();
            muIm[i] = layer.material().muImag();
            thickness[i] = layer.thickness();
        }
        return new LayeredPlate(sigma, muRe, muIm, thickness);
    }

    /** What a target does to the coil, ohm, at an angular frequency, rad/s, and a distance, m. */
    @FunctionalInterface
    interface Effect {

        Complex change(double omega, double distance);
    }

    /** The tank with a target at a distance, m. */
    State state(TargetField target, double distance) {
        return state(effect(target), distance);
    }

    /** The tank under an effect at a distance, m. */
    State state(Effect effect, double distance) {
        return settled(free.omega(), omega -> effect.change(omega, distance), distance);
    }

    /** Iterates the frequency until the impedance and the resonance agree. */
    private State settled(double start, DoubleFunction<Complex> change, double distance) {
        double before = 0;
        double beforeNext = 0;
        double omega = start;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            Complex shift = change.apply(omega);
            Complex z = impedance(omega).add(shift);
            double inductance = z.getImaginary() / omega;
            var resonance = tank.resonance(inductance, z.getReal());
            if (resonance.isEmpty()) {
                throw new ArithmeticException(String.format(
                        Locale.ROOT,
                        "with a target at %.4g mm the tank has too much loss to resonate: resistance %.4g ohm,"
                                + " inductance %.4g uH, capacitance %.4g nF",
                        distance * 1e3,
                        z.getReal(),
                        inductance * 1e6,
                        tank.capacitance() * 1e9));
            }
            double next = resonance.get().omega();
            if (Math.abs(next - omega) <= FREQUENCY_TOLERANCE * omega) {
                return new State(omega, z, shift, resonance.get().conductance());
            }
            // secant step to the fixed point; the first step has no slope yet
            double slope = i == 0 ? 0 : (next - beforeNext) / (omega - before);
            before = omega;
            beforeNext = next;
            omega = (next - slope * omega) / (1 - slope);
        }
        throw new ArithmeticException(String.format(
                Locale.ROOT, "with a target at %.4g mm the frequency of the tank does not settle", distance * 1e3));
    }

    /** What a target does, with tables that serve all distances; for one thread. */
    Effect effect(TargetField target) {
        return target instanceof BesideTarget b
                ? beside(b.target(), b.offset())
                : (omega, distance) -> change(target, omega, distance);
    }

    /** The operators are shifted at both ends of the band, and the change over w is linear in between. */
    private Effect beside(TargetField target, double offset) {
        Shifted low = shifted(target, offset, band.low());
        Shifted high = shifted(target, offset, band.high());
        return (omega, distance) -> {
            double t = (omega - band.low()) / (band.high() - band.low());
            return low.impedance(distance)
                    .multiply((1 - t) * omega / band.low())
                    .add(high.impedance(distance).multiply(t * omega / band.high()));
        };
    }

    private Shifted shifted(TargetField target, double offset, double omega) {
        return field.beside(omega, resolution.cut()).at(target, offset);
    }

    /** What the azimuthal orders left out may add to the change of impedance, ohm; 0 for a target on the axis. */
    double truncation(TargetField target, double omega, double distance) {
        return target instanceof BesideTarget b
                ? shifted(b.target(), b.offset(), omega).truncation(distance)
                : 0;
    }

    /** Change of the impedance by a target at a distance, m, and an angular frequency, ohm. */
    Complex change(TargetField target, double omega, double distance) {
        if (target instanceof BesideTarget b) {
            return shifted(b.target(), b.offset(), omega).impedance(distance);
        }
        return field.at(omega).impedance(target.at(omega), distance);
    }

    /** The waves in the gap at a state. */
    GapState gap(TargetField target, double omega, double distance) {
        return field.at(omega).solve(target.at(omega), distance);
    }
}
