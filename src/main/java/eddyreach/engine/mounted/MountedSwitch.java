package eddyreach.engine.mounted;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.TankState;
import eddyreach.engine.core.TargetEffect;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.BackedTarget;
import eddyreach.field.targets.ThroughTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Mount;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.complex.Complex;

/**
 * A switch in its mount with one target and, where there is one, a background behind it, at one resolution: the tank at any distance of the
 * target. For one thread.
 *
 * <p>A target beside the axis stands above the highest metal and before no background. Above the highest metal of the mount switch and target are joined by waves; below it {@link DippedTarget} takes over.
 */
public final class MountedSwitch {

    private final SolvedSwitch solved;
    private final Target target;
    private final Optional<Mount.Standing> background;
    private final double floor;
    private final boolean acts;
    private final Optional<PlacedTarget> alone;
    private final Optional<TargetEffect> effect;
    private final Optional<ThroughTarget> through;
    private final Optional<TargetField> behind;
    private final Optional<DippedTarget> dipped;
    private final TankState without;

    /**
     * @param solved the switch in its mount
     * @param target the target
     * @param background what stands behind it
     * @param floor least distance that the mount lets the target have, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public MountedSwitch(SolvedSwitch solved, Target target, Optional<Mount.Standing> background, double floor) {
        this(solved, target, background, floor, 0, Optional.empty());
    }

    /**
     * For bands: a variant of another mounted, with a little other materials or temperature.
     *
     * @param like the mounted that it is a variant of; empty for the first
     * @param nearest distance below which azimuthal orders that matter there alone are left out beside the axis, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static MountedSwitch variant(
            Optional<MountedSwitch> like,
            SolvedSwitch solved,
            Target target,
            Optional<Mount.Standing> background,
            double floor,
            double nearest) {
        return new MountedSwitch(solved, target, background, floor, nearest, like.flatMap(s -> s.dipped));
    }

    private MountedSwitch(
            SolvedSwitch solved,
            Target target,
            Optional<Mount.Standing> background,
            double floor,
            double nearest,
            Optional<DippedTarget> like) {
        this.solved = solved;
        this.target = target;
        this.background = background;
        this.floor = floor;
        behind = background.map(b -> solved.onAxis(b.plate().asTarget()));
        acts = !target.withoutEffect();
        boolean bounded = acts && !solved.fields().endless(target);
        alone = background.isEmpty() ? Optional.of(solved.target(target)) : Optional.empty();
        effect = alone.map(field -> solved.effect(field, nearest));
        through = background.isPresent() && bounded
                ? Optional.of(new ThroughTarget(
                        target.parts(),
                        solved.basis(),
                        solved.band(),
                        solved.celsius(),
                        solved.resolution(),
                        solved.scale()))
                : Optional.empty();
        dipped = like.isPresent() && reaches(floor)
                ? like.map(d -> d.variant(solved, standing(), rings()))
                : dipped(floor);
        without = background
                .map(b -> solved.state(behind.orElseThrow(), b.distance()))
                .orElse(solved.free());
    }

    /** The same with another least distance, m; nothing is solved again. */
    private MountedSwitch(MountedSwitch other, double floor) {
        solved = other.solved;
        target = other.target;
        background = other.background;
        this.floor = floor;
        acts = other.acts;
        alone = other.alone;
        effect = other.effect;
        through = other.through;
        behind = other.behind;
        without = other.without;
        dipped = dipped(floor);
    }

    /** The same followed down to another least distance, m. */
    public MountedSwitch downTo(double least) {
        return new MountedSwitch(this, least);
    }

    private boolean reaches(double least) {
        return acts && Double.isFinite(target.radius()) && least < solved.plane();
    }

    private Optional<DippedTarget> dipped(double least) {
        return reaches(least)
                ? Optional.of(new DippedTarget(solved, standing(), rings(), stepped(), least, solved.plane()))
                : Optional.empty();
    }

    /** The background as a disc for the direct solve, an endless one cut where it does not matter. */
    private List<Part> standing() {
        return background
                .map(b -> new Part(
                        "background",
                        Role.MOUNT,
                        new Section(
                                0,
                                Math.min(b.plate().diameter() / 2, OffsetLimit.ENDLESS * solved.scale()),
                                b.distance(),
                                b.distance() + b.plate().thickness()),
                        b.plate().material()))
                .stream()
                .toList();
    }

    /** The target's rings; those that stand for a ball are the more, the finer everything else is. */
    private List<Part> rings() {
        return target.body() instanceof Body.Ball ball
                ? ball.stepped(
                        target.id(),
                        AccuracyPolicy.ballDiscs(solved.resolution().waves()))
                : target.parts();
    }

    private Optional<TargetField> stepped() {
        return target.body() instanceof Body.Ball
                ? alone.filter(TargetField.class::isInstance).map(TargetField.class::cast)
                : Optional.empty();
    }

    public SolvedSwitch solved() {
        return solved;
    }

    /** Least distance that the mount lets the target have, m. */
    public double floor() {
        return floor;
    }

    /** The tank without the target, but with the background. */
    public TankState without() {
        return without;
    }

    /**
     * The tank with the target at a distance, m.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public TankState state(double distance) {
        if (!acts) {
            return without;
        }
        if (distance < solved.plane() && dipped.isPresent()) {
            DippedTarget d = dipped.get();
            if (background.isEmpty()) {
                return solved.state(d::change, distance);
            }
            double at = background.get().distance();
            return solved.state(
                    (omega, g) -> d.change(omega, g).add(solved.change(behind.orElseThrow(), omega, at)), distance);
        }
        // contact with the highest metal where rounding puts the target a hair below it
        double above = Math.max(distance, solved.plane());
        return effect.isPresent() ? solved.state(effect.get(), above) : solved.state(backed(distance), above);
    }

    /**
     * What the interpolation inside a recess may be wrong by, ohm; 0 above it.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public double interpolation(double omega, double distance) {
        return distance < solved.plane() && dipped.isPresent() ? dipped.get().error(omega, distance) : 0;
    }

    /**
     * What the discs that stand for a ball inside a recess may make of resistance and reactance that is wrong, ohm; 0 for others and above.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public Complex stairs(double omega, double distance) {
        return distance < solved.plane() && dipped.isPresent() ? dipped.get().stairs(omega, distance) : Complex.ZERO;
    }

    /** What orders about the axis that are left out may add to the change of impedance, ohm; 0 on the axis. */
    double truncation(double distance) {
        return effect.map(e -> e.truncation(distance)).orElse(0.0);
    }

    /** What a disc in place of the target's real outline may change of the conductance beside the axis, S; 0 on it. */
    double outline(TankState here, double distance) {
        return alone.map(field -> OffAxisLimits.outline(solved, target, field, here, distance))
                .orElse(0.0);
    }

    /** True when a target may dip below the plane in which it and the switch are joined. */
    public boolean dips() {
        return dipped.isPresent();
    }

    /** The target together with the background behind it. */
    private TargetField backed(double distance) {
        Mount.Standing b = background.orElseThrow();
        double gap = b.distance() - distance - target.thickness();
        if (through.isPresent()) {
            return new BackedTarget(through.get(), behind.orElseThrow(), Math.max(0, gap));
        }
        // with the background an endless target is one layered plate
        List<Layer> layers = new ArrayList<>(target.layers());
        if (gap > 0) {
            layers.add(new Layer(Material.AIR, gap));
        }
        layers.add(new Layer(b.plate().material(), b.plate().thickness()));
        return solved.onAxis(new Target(target.id(), target.label(), new Target.Outline.Endless(), layers));
    }
}
