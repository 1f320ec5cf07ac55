package eddyreach.study;

import eddyreach.field.BackedTarget;
import eddyreach.field.TargetField;
import eddyreach.field.ThroughTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.Extent;
import eddyreach.model.Layer;
import eddyreach.model.Mount;
import eddyreach.model.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A switch in its mount with one target on the axis and, where there is one, a background behind it, at one resolution: the tank at any
 * distance of the target.
 *
 * <p>Above the highest metal of the mount switch and target are joined by waves; below it {@link DippedTarget} takes over.
 */
final class Scene {

    private final Bench bench;
    private final Target target;
    private final Optional<Mount.Standing> background;
    private final double floor;
    private final boolean acts;
    private final Optional<TargetField> alone;
    private final Optional<ThroughTarget> through;
    private final Optional<TargetField> behind;
    private final Optional<DippedTarget> dipped;
    private final Bench.State without;

    /**
     * @param bench the switch in its mount
     * @param target the target
     * @param background what stands behind it
     * @param floor least distance that the mount lets the target have, m
     */
    Scene(Bench bench, Target target, Optional<Mount.Standing> background, double floor) {
        this.bench = bench;
        this.target = target;
        this.background = background;
        this.floor = floor;
        behind = background.map(b -> bench.target(b.plate().asTarget()));
        acts = !target.withoutEffect();
        boolean bounded = acts && !bench.fields().endless(target);
        alone = background.isEmpty() ? Optional.of(bench.target(target)) : Optional.empty();
        through = background.isPresent() && bounded
                ? Optional.of(new ThroughTarget(
                        target.parts(),
                        bench.basis(),
                        bench.band(),
                        bench.celsius(),
                        bench.resolution(),
                        bench.scale()))
                : Optional.empty();
        boolean finite = Double.isFinite(target.radius());
        dipped = acts && finite && floor < bench.plane()
                ? Optional.of(new DippedTarget(bench, standing(), target.parts(), floor, bench.plane()))
                : Optional.empty();
        without = background
                .map(b -> bench.state(behind.orElseThrow(), b.distance()))
                .orElse(bench.free());
    }

    /** The background as a disc for the direct solve, an endless one cut where it does not matter. */
    private List<Part> standing() {
        return background
                .map(b -> new Part(
                        "background",
                        Role.MOUNT,
                        new Section(
                                0,
                                Math.min(b.plate().diameter() / 2, Extent.ENDLESS * bench.scale()),
                                b.distance(),
                                b.distance() + b.plate().thickness()),
                        b.plate().material()))
                .stream()
                .toList();
    }

    Bench bench() {
        return bench;
    }

    /** Least distance that the mount lets the target have, m. */
    double floor() {
        return floor;
    }

    /** The tank without the target, but with the background. */
    Bench.State without() {
        return without;
    }

    /** The tank with the target at a distance, m. */
    Bench.State state(double distance) {
        if (!acts) {
            return without;
        }
        if (distance < bench.plane() && dipped.isPresent()) {
            DippedTarget d = dipped.get();
            if (background.isEmpty()) {
                return bench.state(d::change, distance);
            }
            double at = background.get().distance();
            return bench.state(
                    (omega, g) -> d.change(omega, g).add(bench.change(behind.orElseThrow(), omega, at)), distance);
        }
        // contact with the highest metal where rounding puts the target a hair below it
        return bench.state(field(distance), Math.max(distance, bench.plane()));
    }

    /** What the interpolation inside a recess may be wrong by, ohm; 0 above it. */
    double interpolation(double omega, double distance) {
        return distance < bench.plane() && dipped.isPresent() ? dipped.get().error(omega, distance) : 0;
    }

    /** The target together with what stands behind it. */
    TargetField field(double distance) {
        if (alone.isPresent()) {
            return alone.get();
        }
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
        return bench.target(new Target(target.id(), target.label(), new Target.Outline.Endless(), layers));
    }
}
