package eddyreach.engine.core;

import eddyreach.coil.WindingResistance;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.GapState;
import eddyreach.field.join.OffAxisResponse;
import eddyreach.field.join.SwitchField;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.OffAxisTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.Tank;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import org.apache.commons.math3.complex.Complex;

/**
 * One switch with its field operators and its tank, at one resolution: everything that is needed to put targets in front of it.
 *
 * <p>The oscillator follows the inductance: at each distance the frequency is iterated until impedance and resonance agree.
 */
public final class SolvedSwitch {

    /** Ambient temperature of trim and test, degrees Celsius (IEC 60947-5-2: 23 +- 5): that of a bench unless {@link #at} makes another. */
    public static final double AMBIENT = 23;

    /** Relative shift of the frequency by a mount above which its operators are computed at the new frequency. */
    private static final double STRAY = 0.03;

    private static final int MAX_ITERATIONS = 30;
    private static final double FREQUENCY_TOLERANCE = 1e-7;

    private final SwitchModel model;
    private final Resolution resolution;
    private final double celsius;
    private final double scale;
    private final double widest;
    private final double farthest;
    private final List<Part> parts;
    private final double plane;
    private final WaveBasis basis;
    private final Band band;
    private final WindingResistance winding;
    private final SwitchField field;
    private final TargetFields fields;
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
    public record State(double omega, Complex impedance, Complex change, double conductance) {

        public double resistance() {
            return impedance.getReal();
        }

        public double inductance() {
            return impedance.getImaginary() / omega;
        }
    }

    /**
     * @param model the switch
     * @param resolution how fine
     * @param targets the targets that will be put before it
     * @param memory is told the most memory that solving may take, bytes, before it begins
     */
    public SolvedSwitch(SwitchModel model, Resolution resolution, List<Target> targets, LongConsumer memory) {
        this.model = model;
        this.resolution = resolution;
        celsius = AMBIENT;
        scale = model.coreRadius();
        parts = model.parts();
        plane = 0;
        widest = targets.stream()
                .mapToDouble(t -> TargetFields.width(t, scale))
                .max()
                .orElse(0);
        farthest = targets.stream()
                .mapToDouble(t -> TargetFields.offset(t, scale))
                .max()
                .orElse(0);
        basis = resolution.waves(scale, widest, farthest);
        double omega = 2 * Math.PI * model.frequency();
        band = resolution.band(omega);
        fields = new TargetFields(basis, band, celsius, scale);
        winding = new WindingResistance(model.winding());
        SwitchField.Prepared prepared = prepared();
        memory.accept(prepared.memory());
        field = prepared.solve();
        Complex z = impedance(omega);
        tank = Tank.forFrequency(z.getImaginary() / omega, z.getReal(), model.frequency());
        free = new State(omega, z, Complex.ZERO, tank.conductance(z.getImaginary() / omega, z.getReal()));
    }

    /** The same switch with the same capacitor in other surroundings. */
    private SolvedSwitch(SolvedSwitch other, double celsius, List<Part> parts, Band band, LongConsumer memory) {
        model = other.model;
        resolution = other.resolution;
        this.celsius = celsius;
        this.parts = List.copyOf(parts);
        scale = other.scale;
        widest = other.widest;
        farthest = other.farthest;
        plane = metal(parts).mapToDouble(Section::z1).reduce(0, Math::max);
        // a wide mount answers to a wave much as a wide target does
        double mount = metal(parts).mapToDouble(Section::r1).reduce(0, Math::max);
        basis = parts.equals(other.parts) ? other.basis : resolution.waves(scale, Math.max(widest, mount), farthest);
        winding = other.winding;
        this.band = band;
        fields = new TargetFields(basis, band, celsius, scale);
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
    public SolvedSwitch at(double celsius) {
        return new SolvedSwitch(this, celsius, parts, band, bytes -> {});
    }

    /**
     * This switch with a mount around it; the capacitor stays as it is.
     *
     * @param mount the mount's parts; none for free air
     * @param memory is told the most memory that solving may take, bytes, before it begins
     */
    public SolvedSwitch in(List<Part> mount, LongConsumer memory) {
        if (mount.isEmpty()) {
            return this;
        }
        List<Part> all = Stream.concat(model.parts().stream(), mount.stream()).toList();
        SolvedSwitch mounted = new SolvedSwitch(this, celsius, all, band, memory);
        double shift = mounted.free.omega() / free.omega() - 1;
        // where the mount has moved the frequency away, the operators are computed there
        return Math.abs(shift) <= STRAY
                ? mounted
                : new SolvedSwitch(this, celsius, all, resolution.band(mounted.free.omega()), memory);
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
    public List<Part> parts() {
        return parts;
    }

    /** Height above the face of the plane in which switch and target are joined: that of the highest metal of the mount, m. */
    public double plane() {
        return plane;
    }

    /** The waves between switch and target. */
    public WaveBasis basis() {
        return basis;
    }

    /** How fine. */
    public Resolution resolution() {
        return resolution;
    }

    public double celsius() {
        return celsius;
    }

    /** The angular frequencies between which operators are interpolated. */
    public Band band() {
        return band;
    }

    public double scale() {
        return scale;
    }

    /** The winding as the field sees it at an angular frequency. */
    public CoilRegion coil(double omega) {
        return new CoilRegion(model.winding().section(), model.winding().turns(), winding.muLoss(omega, celsius));
    }

    private Complex impedance(double omega) {
        return field.impedance(omega).add(winding.besideField(omega, celsius));
    }

    public SwitchModel model() {
        return model;
    }

    public SwitchField field() {
        return field;
    }

    public double capacitance() {
        return tank.capacitance();
    }

    /** The tank without a target. */
    public State free() {
        return free;
    }

    /** The winding's loss beside the part that the field carries, ohm. */
    public double windingBesideField(double omega) {
        return winding.besideField(omega, celsius);
    }

    /** The field problem of a target. */
    public TargetField target(Target target) {
        return fields.of(target, resolution);
    }

    /** The field problem of a target of which only the reflection is asked, at half the cost: not its fields and losses. */
    public TargetField reflector(Target target) {
        return fields.of(target, resolution.withoutFields());
    }

    /** The field problem of a target about its own axis, made to serve up to its offset. */
    public TargetField about(Target target) {
        return fields.about(target, resolution);
    }

    /** How targets are computed before this switch. */
    public TargetFields fields() {
        return fields;
    }

    /** What a target does to the coil, ohm, at an angular frequency, rad/s, and a distance, m. */
    @FunctionalInterface
    public interface Effect {

        public Complex change(double omega, double distance);

        /** What the azimuthal orders left out may add to the change, ohm, at a distance, m; 0 on the axis. */
        default double truncation(double distance) {
            return 0;
        }
    }

    /** The tank with a target at a distance, m. */
    public State state(TargetField target, double distance) {
        return state(effect(target), distance);
    }

    /** The tank under an effect at a distance, m. */
    public State state(Effect effect, double distance) {
        return settle(effect, distance, free.omega());
    }

    /** The same; empty when no frequency is found at which coil and tank agree. */
    public Optional<State> stateIfAny(Effect effect, double distance) {
        return settled(effect, distance, free.omega());
    }

    private State settle(Effect effect, double distance, double start) {
        return settled(effect, distance, start).orElseThrow(() -> {
            Complex z = impedance(start).add(effect.change(start, distance));
            return new NoOscillationException(String.format(
                    Locale.ROOT,
                    "the oscillator finds no frequency %s: its coil then has a quality factor of %.3g (%.4g ohm, %.4g uH at %.4g kHz,"
                            + " with %.4g nF); first lower the coil's loss (thicker wire, a core with less loss) or change the frequency",
                    Double.isInfinite(distance)
                            ? "without a target"
                            : String.format(Locale.ROOT, "with the target at %.4g mm", distance * 1e3),
                    z.getImaginary() / z.getReal(),
                    z.getReal(),
                    z.getImaginary() / start * 1e6,
                    start / (2 * Math.PI) * 1e-3,
                    tank.capacitance() * 1e9));
        });
    }

    /** Iterates the frequency until the impedance and the tank agree; empty where they do not meet. */
    private Optional<State> settled(Effect effect, double distance, double start) {
        double before = 0;
        double beforeNext = 0;
        double omega = start;
        for (int i = 0; i < MAX_ITERATIONS; i++) {
            Complex change = effect.change(omega, distance);
            Complex z = impedance(omega).add(change);
            double inductance = z.getImaginary() / omega;
            if (!(inductance > 0)) {
                return Optional.empty();
            }
            double next = tank.frequency(inductance, z.getReal());
            if (Math.abs(next - omega) <= FREQUENCY_TOLERANCE * omega) {
                return Optional.of(new State(omega, z, change, tank.conductance(inductance, z.getReal())));
            }
            // secant step to the fixed point; the first step has no slope yet
            double slope = i == 0 ? 0 : (next - beforeNext) / (omega - before);
            before = omega;
            beforeNext = next;
            omega = (next - slope * omega) / (1 - slope);
            if (!(omega > 0)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** What a target does, with tables that serve all distances; for one thread. */
    public Effect effect(TargetField target) {
        return effect(target, 0);
    }

    /** The same, beside the axis with no more azimuthal orders below a distance, m, than it needs. */
    public Effect effect(TargetField target, double nearest) {
        return target instanceof OffAxisTarget b
                ? beside(b.target(), b.offset(), nearest)
                : (omega, distance) -> change(target, omega, distance);
    }

    /** The operators are shifted at both ends of the band, and the change over w is linear in between. */
    private Effect beside(TargetField target, double offset, double nearest) {
        OffAxisResponse low = shifted(target, offset, nearest, band.low());
        OffAxisResponse high = shifted(target, offset, nearest, band.high());
        return new Effect() {
            @Override
            public Complex change(double omega, double distance) {
                double t = (omega - band.low()) / (band.high() - band.low());
                return low.impedance(distance - plane)
                        .multiply((1 - t) * omega / band.low())
                        .add(high.impedance(distance - plane).multiply(t * omega / band.high()));
            }

            @Override
            public double truncation(double distance) {
                return Math.max(low.truncation(distance - plane), high.truncation(distance - plane));
            }
        };
    }

    private OffAxisResponse shifted(TargetField target, double offset, double nearest, double omega) {
        return field.beside(omega, resolution.cut()).at(target, offset, Math.max(0, nearest - plane));
    }

    /** Change of the impedance by a target at a distance, m, and an angular frequency, ohm. */
    public Complex change(TargetField target, double omega, double distance) {
        if (target instanceof OffAxisTarget b) {
            return shifted(b.target(), b.offset(), 0, omega).impedance(distance - plane);
        }
        return field.at(omega).impedance(target.at(omega), distance - plane);
    }

    /** The waves in the gap at a state. */
    GapState gap(TargetField target, double omega, double distance) {
        return field.at(omega).solve(target.at(omega), distance - plane);
    }
}
