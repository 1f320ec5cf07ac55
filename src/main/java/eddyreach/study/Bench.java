package eddyreach.study;

import eddyreach.closedform.LayeredPlate;
import eddyreach.coil.WindingResistance;
import eddyreach.field.Band;
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
import java.util.function.LongConsumer;
import java.util.stream.Stream;
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

    /** Relative shift of the frequency by a mount above which its operators are computed at the new frequency. */
    private static final double STRAY = 0.03;

    private static final int MAX_ITERATIONS = 30;
    private static final double FREQUENCY_TOLERANCE = 1e-7;

    private final SwitchModel model;
    private final Resolution resolution;
    private final double celsius;
    private final double scale;
    private final double widest;
    private final List<Part> parts;
    private final double plane;
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
        scale = model.coreRadius();
        parts = model.parts();
        plane = 0;
        widest = targets.stream().mapToDouble(this::width).max().orElse(0);
        basis = resolution.waves(scale, widest);
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

    /** The same switch with the same capacitor in other surroundings. */
    private Bench(Bench other, double celsius, List<Part> parts, Band band, LongConsumer memory) {
        model = other.model;
        resolution = other.resolution;
        this.celsius = celsius;
        this.parts = List.copyOf(parts);
        scale = other.scale;
        widest = other.widest;
        plane = metal(parts).mapToDouble(Section::z1).reduce(0, Math::max);
        // a wide mount answers to a wave much as a wide target does
        double mount = metal(parts).mapToDouble(Section::r1).reduce(0, Math::max);
        basis = parts.equals(other.parts) ? other.basis : resolution.waves(scale, Math.max(widest, mount));
        winding = other.winding;
        this.band = band;
        SwitchField.Prepared prepared = prepared();
        memory.accept(prepared.memory());
        field = prepared.solve();
        tank = other.tank;
        free = settle((omega, g) -> Complex.ZERO, Double.POSITIVE_INFINITY, other.free.omega());
    }

    /** Sections of the parts of a mount that matter to the field. */
    private static Stream<Section> metal(List<Part> parts) {
        return parts.stream()
                .filter(p -> p.role() == Role.MOUNT && p.material().hasEffect())
                .map(Part::section);
    }

    /** This switch at another temperature, degrees Celsius; the capacitor stays as it is. */
    Bench at(double celsius) {
        return new Bench(this, celsius, parts, band, bytes -> {});
    }

    /**
     * This switch with a mount around it; the capacitor stays as it is.
     *
     * @param mount the mount's parts; none for free air
     * @param memory is told the most memory that solving may take, bytes, before it begins
     */
    Bench in(List<Part> mount, LongConsumer memory) {
        if (mount.isEmpty()) {
            return this;
        }
        List<Part> all = Stream.concat(model.parts().stream(), mount.stream()).toList();
        Bench mounted = new Bench(this, celsius, all, band, memory);
        double shift = mounted.free.omega() / free.omega() - 1;
        // where the mount has moved the frequency away, the operators are computed there
        return Math.abs(shift) <= STRAY
                ? mounted
                : new Bench(this, celsius, all, resolution.band(mounted.free.omega()), memory);
    }

    private SwitchField.Prepared prepared() {
        return new SwitchField.Prepared(
                parts.stream().map(p -> p.shifted(-plane)).toList(),
                omega -> coil(omega).shifted(-plane),
                basis,
                band,
                celsius,
                resolution,
                scale);
    }

    /** Everything that stands around the coil: core, housing and mount. */
    List<Part> parts() {
        return parts;
    }

    /** Height above the face of the plane in which switch and target are joined: that of the highest metal of the mount, m. */
    double plane() {
        return plane;
    }

    /** The waves between switch and target. */
    WaveBasis basis() {
        return basis;
    }

    /** How fine. */
    Resolution resolution() {
        return resolution;
    }

    double celsius() {
        return celsius;
    }

    /** The angular frequencies between which operators are interpolated. */
    Band band() {
        return band;
    }

    double scale() {
        return scale;
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
        return state((omega, g) -> change(target, omega, g), distance);
    }

    /** The tank under an effect at a distance, m. */
    State state(Effect effect, double distance) {
        return settle(effect, distance, free.omega());
    }

    /** Iterates the frequency until the impedance and the resonance agree. */
    private State settle(Effect effect, double distance, double start) {
        double before = 0;
        double beforeNext = 0;
        double omega = start;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            Complex change = effect.change(omega, distance);
            Complex z = impedance(omega).add(change);
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
                return new State(omega, z, change, resonance.get().conductance());
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

    /**
     * A target with its axis beside the switch's; for one thread. The operators are shifted at three frequencies of the band, and the change over
     * w is a parabola through them.
     */
    Effect beside(TargetField target, double offset) {
        double middle = (band.low() + band.high()) / 2;
        double[] nodes = {band.low(), middle, band.high()};
        Shifted[] shifted = new Shifted[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            shifted[i] = field.beside(nodes[i]).at(target, offset);
        }
        return (omega, distance) -> {
            Complex sum = Complex.ZERO;
            for (int i = 0; i < nodes.length; i++) {
                double weight = omega / nodes[i];
                for (int j = 0; j < nodes.length; j++) {
                    weight *= i == j ? 1 : (omega - nodes[j]) / (nodes[i] - nodes[j]);
                }
                sum = sum.add(shifted[i].impedance(distance - plane).multiply(weight));
            }
            return sum;
        };
    }

    /** What the truncated orders of a shifted target may leave of the change of impedance, ohm. */
    double truncation(TargetField target, double offset, double omega, double distance) {
        return field.beside(omega).at(target, offset).truncation(distance - plane);
    }

    /** Change of the impedance by a target at a distance, m, and an angular frequency, ohm. */
    Complex change(TargetField target, double omega, double distance) {
        return field.at(omega).impedance(target.at(omega), distance - plane);
    }

    /** The waves in the gap at a state. */
    GapState gap(TargetField target, double omega, double distance) {
        return field.at(omega).solve(target.at(omega), distance - plane);
    }
}
