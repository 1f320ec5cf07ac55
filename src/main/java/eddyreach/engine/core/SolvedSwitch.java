package eddyreach.engine.core;

import eddyreach.coil.WindingResistance;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.GapState;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.SwitchField;
import eddyreach.field.join.TargetField;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.Tank;
import java.util.List;
import java.util.Optional;
import java.util.function.LongConsumer;
import org.apache.commons.math3.complex.Complex;

/**
 * One switch whose field is solved, at one resolution and in given surroundings: everything that is needed to put targets in front of it.
 *
 * <p>What targets do to its coil is told by {@link TargetEffects}, at which frequency the tank then oscillates by {@link TankSettling}.
 */
public final class SolvedSwitch {

    private final SwitchModel model;
    private final Resolution resolution;
    private final double widest;
    private final double farthest;
    private final Surroundings surroundings;
    private final WaveBasis basis;
    private final Band band;
    private final WindingResistance winding;
    private final SwitchField field;
    private final TargetFields targets;
    private final TargetEffects effects;
    private final TankSettling settling;
    private final TankState free;

    /**
     * The switch in free air, at the temperature of its trim, with the capacitor that gives its frequency.
     *
     * @param model the switch
     * @param resolution how fine
     * @param before the targets that will be put before it
     * @param memory is told the most memory that solving may take, bytes, before it begins
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public SolvedSwitch(SwitchModel model, Resolution resolution, List<Target> before, LongConsumer memory) {
        this.model = model;
        this.resolution = resolution;
        surroundings = Surroundings.freeAir(model);
        widest = before.stream()
                .mapToDouble(t -> TargetFields.width(t, scale()))
                .max()
                .orElse(0);
        farthest = before.stream()
                .mapToDouble(t -> TargetFields.offset(t, scale()))
                .max()
                .orElse(0);
        basis = resolution.waves(scale(), widest, farthest, surroundings.housingRadius());
        double omega = 2 * Math.PI * model.frequency();
        band = resolution.band(omega);
        winding = new WindingResistance(model.winding());
        targets = new TargetFields(basis, band, celsius(), scale());
        field = solved(memory);
        effects = new TargetEffects(field, band, plane(), resolution.cut());
        Complex z = impedance(omega);
        settling = new TankSettling(
                Tank.forFrequency(z.getImaginary() / omega, z.getReal(), model.frequency()), this::impedance);
        free = settling.at(omega);
    }

    /** The same switch with the same capacitor in other surroundings. */
    private SolvedSwitch(
            SolvedSwitch other, Surroundings surroundings, Resolution resolution, Band band, LongConsumer memory) {
        model = other.model;
        this.resolution = resolution;
        widest = other.widest;
        farthest = other.farthest;
        this.surroundings = surroundings;
        // a wide mount answers to a wave much as a wide target does
        basis = surroundings.parts().equals(other.parts())
                ? other.basis
                : resolution.waves(
                        scale(), Math.max(widest, surroundings.mountRadius()), farthest, surroundings.housingRadius());
        this.band = band;
        winding = other.winding;
        targets = new TargetFields(basis, band, celsius(), scale());
        field = solved(memory);
        effects = new TargetEffects(field, band, plane(), resolution.cut());
        settling = new TankSettling(other.settling.tank(), this::impedance);
        free = settling.settle((omega, g) -> Complex.ZERO, Double.POSITIVE_INFINITY, other.free.omega());
    }

    /** The same switch built with other materials, or parts moved by fractions of a millimetre, and another capacitor, in free air. */
    private SolvedSwitch(SolvedSwitch other, SwitchModel built, double capacitance) {
        model = built;
        resolution = other.resolution.withoutFields();
        widest = other.widest;
        farthest = other.farthest;
        surroundings = Surroundings.freeAir(built);
        basis = other.basis;
        band = other.band;
        winding = new WindingResistance(built.winding());
        targets = other.targets;
        field = solved(bytes -> {});
        effects = new TargetEffects(field, band, plane(), resolution.cut());
        settling = new TankSettling(new Tank(capacitance), this::impedance);
        free = settling.settle((omega, g) -> Complex.ZERO, Double.POSITIVE_INFINITY, other.free.omega());
    }

    /**
     * This switch as one piece of a series is built, in free air at 23 degrees Celsius: targets solved for this one serve before it. Its fields and losses cannot be
     * asked for.
     *
     * @param piece the same switch with other materials, or with parts that are moved by little against its size
     * @param capacitance capacitance of its tank, F
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SolvedSwitch built(SwitchModel piece, double capacitance) {
        return new SolvedSwitch(this, piece, capacitance);
    }

    /**
     * This switch at another temperature, degrees Celsius; the capacitor stays as it is.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SolvedSwitch at(double celsius) {
        return new SolvedSwitch(this, surroundings.at(celsius), resolution, band, bytes -> {});
    }

    /**
     * This switch with a mount around it; the capacitor stays as it is.
     *
     * @param mount the mount's parts; none for free air
     * @param memory is told the most memory that solving may take, bytes, before it begins
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SolvedSwitch in(List<Part> mount, LongConsumer memory) {
        return in(mount, resolution, memory);
    }

    /**
     * The same, of which no fields and losses can be asked: it keeps no factors, which take most of the memory.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SolvedSwitch operatorsIn(List<Part> mount, LongConsumer memory) {
        return in(mount, resolution.withoutFields(), memory);
    }

    private SolvedSwitch in(List<Part> mount, Resolution how, LongConsumer memory) {
        if (mount.isEmpty()) {
            return this;
        }
        Surroundings around = surroundings.in(model, mount);
        SolvedSwitch mounted = new SolvedSwitch(this, around, how, band, memory);
        double shift = mounted.free.omega() / free.omega() - 1;
        // where the mount has moved the frequency away, the operators are computed there
        return Math.abs(shift) <= AccuracyPolicy.STRAY
                ? mounted
                : new SolvedSwitch(this, around, how, resolution.band(mounted.free.omega()), memory);
    }

    private SwitchField solved(LongConsumer memory) {
        double plane = plane();
        SwitchField.Prepared prepared = new SwitchField.Prepared(
                parts().stream().map(p -> p.shifted(-plane)).toList(),
                omega -> coil(omega).shifted(-plane),
                basis,
                band,
                celsius(),
                resolution,
                scale());
        memory.accept(prepared.memory());
        return prepared.solve();
    }

    public SwitchModel model() {
        return model;
    }

    /** How fine. */
    public Resolution resolution() {
        return resolution;
    }

    /** Everything that stands around the coil: core, housing and mount. */
    public List<Part> parts() {
        return surroundings.parts();
    }

    /** Temperature of everything, degrees Celsius. */
    public double celsius() {
        return surroundings.celsius();
    }

    /** Height above the face of the plane in which switch and target are joined: that of the highest metal of the mount, m. */
    public double plane() {
        return surroundings.highest();
    }

    /** Radius of the core, to which everything is sized, m. */
    public double scale() {
        return model.coreRadius();
    }

    /** The waves between switch and target. */
    public WaveBasis basis() {
        return basis;
    }

    /** The angular frequencies between which operators are interpolated. */
    public Band band() {
        return band;
    }

    /** The winding as the field sees it at an angular frequency. */
    public CoilRegion coil(double omega) {
        return new CoilRegion(model.winding().section(), model.winding().turns(), winding.muLoss(omega, celsius()));
    }

    /** The winding's loss beside the part that the field carries, ohm. */
    public double windingBesideField(double omega) {
        return winding.besideField(omega, celsius());
    }

    private Complex impedance(double omega) {
        return field.impedance(omega).add(windingBesideField(omega));
    }

    public SwitchField field() {
        return field;
    }

    /** Capacitance of the tank, F. */
    public double capacitance() {
        return settling.tank().capacitance();
    }

    /** How targets are computed before this switch. */
    public TargetFields fields() {
        return targets;
    }

    /**
     * The field problem of a target where it stands.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public PlacedTarget target(Target target) {
        return targets.of(target, resolution);
    }

    /**
     * The field problem of a target of which only the reflection is asked, at half the cost: not its fields and losses.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public PlacedTarget reflector(Target target) {
        return targets.of(target, resolution.withoutFields());
    }

    /**
     * The field problem of a target about its own axis, made to serve up to its offset.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public TargetField about(Target target) {
        return targets.about(target, resolution);
    }

    /**
     * The field problem of a target on the axis.
     *
     * @throws IllegalArgumentException if it stands beside the axis
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public TargetField onAxis(Target target) {
        if (target.offset() > 0) {
            throw new IllegalArgumentException(
                    "target " + target.id() + " at an offset of " + target.offset() + " m: must be on the axis");
        }
        return about(target);
    }

    /** The tank without a target. */
    public TankState free() {
        return free;
    }

    /**
     * The tank with a target at a distance, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public TankState state(PlacedTarget target, double distance) {
        return state(effect(target), distance);
    }

    /**
     * The tank under an effect at a distance, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public TankState state(TargetEffect effect, double distance) {
        return settling.settle(effect, distance, free.omega());
    }

    /**
     * The same; empty when no frequency is found at which coil and tank agree.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Optional<TankState> stateIfAny(TargetEffect effect, double distance) {
        return settling.settleIfAny(effect, distance, free.omega());
    }

    /**
     * What a target does, with tables that serve all distances; for one thread.
     *
     * @throws SelfCheckException if a computation fails its own checks
     */
    public TargetEffect effect(PlacedTarget target) {
        return effect(target, 0);
    }

    /**
     * The same, beside the axis with no more azimuthal orders below a distance, m, than it needs.
     *
     * @throws SelfCheckException if a computation fails its own checks
     */
    public TargetEffect effect(PlacedTarget target, double nearest) {
        return effects.of(target, nearest);
    }

    /**
     * Change of the impedance by a target at a distance, m, and an angular frequency, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex change(PlacedTarget target, double omega, double distance) {
        return effects.change(target, omega, distance);
    }

    /** The waves in the gap before a target on the axis at a distance, m. */
    GapState gap(TargetField target, double omega, double distance) {
        return effects.gap(target, omega, distance);
    }
}
