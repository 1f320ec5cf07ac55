package eddyreach.kinds.mount;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.geometry.Part;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * How the switch-on distance of a target follows each dimension of a mount, at the coarse step: the change of the conductance at the
 * distance found, over its slope.
 */
final class DimensionEffects {

    private final SwitchModel model;
    private final MountProbe probe;
    private final Target target;

    /** A dimension and the mount with another value of it; empty where that cannot be. */
    private record Varied(
            DimensionEffect.Varied dimension, int step, double value, DoubleFunction<Optional<Mount>> mount) {}

    DimensionEffects(SwitchModel model, MountProbe probe, Target target) {
        this.model = model;
        this.probe = probe;
        this.target = target;
    }

    /**
     * The sensitivities; none where the target does not switch above the metal of the mount.
     *
     * @param rough the switch in the mount's bounds at the coarse step
     * @param found where the target switches
     */
    List<DimensionEffect> of(Mount mount, List<SolvedSwitch> rough, SwitchDistance found) {
        double change = AccuracyPolicy.DIMENSION_CHANGE * model.faceDiameter();
        if (found.outcome() != SwitchDistance.Outcome.SWITCHES
                || found.on() < rough.get(0).plane() + change) {
            return List.of();
        }
        double on = found.on();
        double step = 0.2 * change;
        double here = Math.log(conductance(mount, rough, on));
        double slope = (Math.log(conductance(mount, rough, on + step)) - Math.log(conductance(mount, rough, on - step)))
                / (2 * step);
        return varied(mount).parallelStream()
                .flatMap(v -> {
                    Optional<Double> up = v.mount().apply(v.value() + change).map(m -> log(m, on) - here);
                    Optional<Double> down = v.mount().apply(v.value() - change).map(m -> here - log(m, on));
                    if (up.isEmpty() && down.isEmpty()) {
                        return Optional.<DimensionEffect>empty().stream();
                    }
                    double a = up.orElseGet(down::get) / change;
                    double b = down.orElseGet(up::get) / change;
                    boolean both = up.isPresent() && down.isPresent();
                    return Optional.of(new DimensionEffect(
                                    v.dimension(),
                                    v.step(),
                                    v.value(),
                                    -(a + b) / 2 / slope,
                                    both ? Math.abs((a - b) / 2 / slope) : Double.NaN))
                            .stream();
                })
                .toList();
    }

    private double log(Mount mount, double on) {
        List<SolvedSwitch> solvedSwitches =
                mount.bounds().stream().map(m -> probe.solved(m, 0)).toList();
        return Math.log(conductance(mount, solvedSwitches, on));
    }

    /** In the middle of the mount's bounds. */
    private double conductance(Mount mount, List<SolvedSwitch> solvedSwitches, double on) {
        return solvedSwitches.stream()
                .mapToDouble(b -> new MountedSwitch(b, target, mount.background(), b.plane())
                        .state(on)
                        .conductance())
                .average()
                .orElseThrow();
    }

    private List<Varied> varied(Mount mount) {
        List<Varied> all = new ArrayList<>();
        mount.wall().ifPresent(w -> addWall(mount, w, all));
        mount.cover().ifPresent(c -> {
            all.add(new Varied(
                    DimensionEffect.Varied.COVER_DISTANCE,
                    0,
                    c.distance(),
                    x -> positive(x)
                            .map(d -> with(
                                    mount,
                                    mount.wall(),
                                    new Mount.Cover(c.material(), d, c.thickness(), c.diameter())))));
            all.add(new Varied(
                    DimensionEffect.Varied.COVER_THICKNESS,
                    0,
                    c.thickness(),
                    x -> positive(x)
                            .map(t -> with(
                                    mount,
                                    mount.wall(),
                                    new Mount.Cover(c.material(), c.distance(), t, c.diameter())))));
        });
        mount.background()
                .ifPresent(b -> all.add(new Varied(
                        DimensionEffect.Varied.BACKGROUND_DISTANCE,
                        0,
                        b.distance(),
                        x -> positive(x)
                                .map(d -> new Mount(
                                        mount.id(),
                                        mount.name(),
                                        mount.note(),
                                        mount.surface(),
                                        mount.wall(),
                                        mount.cover(),
                                        mount.rings(),
                                        Optional.of(new Mount.Standing(b.plate(), d)))))));
        return all;
    }

    private void addWall(Mount mount, Mount.Wall w, List<Varied> all) {
        all.add(new Varied(
                mount.surface() < 0 ? DimensionEffect.Varied.PROUD : DimensionEffect.Varied.SUNK,
                0,
                Math.abs(mount.surface()),
                x -> Optional.of(moved(mount, mount.surface() < 0 ? -x : x))));
        List<Mount.Opening> o = w.openings();
        for (int i = 0; i < o.size(); i++) {
            int at = i;
            int step = o.size() > 1 ? i + 1 : 0;
            boolean cone = o.get(i).conical();
            all.add(new Varied(
                    cone ? DimensionEffect.Varied.COUNTERSINK_DIAMETER : DimensionEffect.Varied.RECESS_DIAMETER,
                    step,
                    o.get(i).front(),
                    x -> replaced(
                            mount,
                            w,
                            at,
                            new Mount.Opening(
                                    x,
                                    o.get(at).conical() ? o.get(at).back() : x,
                                    o.get(at).from(),
                                    o.get(at).to()))));
            all.add(new Varied(
                    cone ? DimensionEffect.Varied.COUNTERSINK_DEPTH : DimensionEffect.Varied.RECESS_DEPTH,
                    step,
                    o.get(i).to(),
                    x -> replaced(
                            mount,
                            w,
                            at,
                            new Mount.Opening(
                                    o.get(at).front(),
                                    o.get(at).back(),
                                    o.get(at).from(),
                                    x))));
        }
        all.add(new Varied(
                DimensionEffect.Varied.BORE,
                0,
                w.bore(),
                x -> Optional.of(w)
                        .filter(any -> x >= model.bodyDiameter()
                                && x < 2 * w.edge()
                                && o.stream().allMatch(k -> k.back() > x))
                        .map(any -> with(
                                mount,
                                Optional.of(new Mount.Wall(w.material(), w.thickness(), w.diameter(), x, o, w.edge())),
                                mount.cover()))));
        if (mount.edged()) {
            double widest = o.stream().mapToDouble(Mount.Opening::front).reduce(w.bore(), Math::max);
            all.add(new Varied(
                    DimensionEffect.Varied.EDGE,
                    0,
                    w.edge(),
                    x -> Optional.of(x)
                            .filter(e -> 2 * e > widest && 2 * e < w.diameter())
                            .map(e -> with(
                                    mount,
                                    Optional.of(
                                            new Mount.Wall(w.material(), w.thickness(), w.diameter(), w.bore(), o, e)),
                                    mount.cover()))));
        }
        double deepest = o.isEmpty() ? 0 : o.get(o.size() - 1).to();
        all.add(new Varied(
                DimensionEffect.Varied.WALL_THICKNESS,
                0,
                w.thickness(),
                x -> positive(x)
                        .filter(t -> t > deepest && mount.rings().isEmpty())
                        .map(t -> with(
                                mount,
                                Optional.of(new Mount.Wall(w.material(), t, w.diameter(), w.bore(), o, w.edge())),
                                mount.cover()))));
    }

    private static Optional<Double> positive(double x) {
        return x > 0 ? Optional.of(x) : Optional.empty();
    }

    /** One of the openings replaced, and the next one moved with its lower end; empty where they no longer fit. */
    private static Optional<Mount> replaced(Mount mount, Mount.Wall w, int at, Mount.Opening opening) {
        List<Mount.Opening> all = new ArrayList<>(w.openings());
        all.set(at, opening);
        if (at + 1 < all.size()) {
            Mount.Opening next = all.get(at + 1);
            all.set(at + 1, new Mount.Opening(next.front(), next.back(), opening.to(), next.to()));
        }
        double last = Math.min(w.diameter(), 2 * w.edge());
        double depth = 0;
        for (Mount.Opening o : all) {
            if (o.front() >= last || o.back() > o.front() || o.to() <= o.from() || o.from() < depth) {
                return Optional.empty();
            }
            last = o.back();
            depth = o.to();
        }
        return last < w.bore() || depth >= w.thickness()
                ? Optional.empty()
                : Optional.of(with(
                        mount,
                        Optional.of(new Mount.Wall(w.material(), w.thickness(), w.diameter(), w.bore(), all, w.edge())),
                        mount.cover()));
    }

    private static Mount with(Mount m, Optional<Mount.Wall> wall, Mount.Cover cover) {
        return with(m, wall, Optional.of(cover));
    }

    private static Mount with(Mount m, Optional<Mount.Wall> wall, Optional<Mount.Cover> cover) {
        return new Mount(m.id(), m.name(), m.note(), m.surface(), wall, cover, m.rings(), m.background());
    }

    /** The wall moved along the switch, with what lies against its back. */
    private static Mount moved(Mount m, double surface) {
        double by = surface - m.surface();
        List<Part> rings = m.rings().stream()
                .map(p -> p.name().equals("washer") || p.name().equals("nut") ? p.shifted(by) : p)
                .toList();
        return new Mount(m.id(), m.name(), m.note(), surface, m.wall(), m.cover(), rings, m.background());
    }
}
