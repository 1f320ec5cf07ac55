package eddyreach.engine.assure;

import eddyreach.engine.assure.SwitchCorners.Condition;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A mount without a straight edge. A switch in it is solved when it is first asked for and kept. For one thread. */
final class MountedPlace implements Place {

    private final Mount mount;
    private final Map<Key, SolvedSwitch> solved = new HashMap<>();

    /** The first that was made of each target, by id, of which the others are variants. */
    private final Map<String, MountedSwitch> nominal = new HashMap<>();

    /** A mount of given metal, by its parts, around a switch at a temperature. */
    private record Key(List<Part> parts, double celsius) {}

    MountedPlace(Mount mount) {
        this.mount = mount;
    }

    @Override
    public List<ConductanceCurve> before(Target target, List<Condition> conditions, UnaryOperator<Material> metal) {
        Mount made = mount.made(metal);
        List<SolvedSwitch> switches = conditions.stream().map(c -> one(c, made)).toList();
        double room =
                made.background().map(b -> b.distance() - target.thickness()).orElse(Double.POSITIVE_INFINITY);
        Optional<MountedSwitch> like = Optional.ofNullable(nominal.get(target.id()));
        List<MountedSwitch> all = switches.parallelStream()
                .map(one -> MountedSwitch.variant(
                        like, one, target, made.background(), floor(target), ConductanceCurve.nearest(one)))
                .toList();
        nominal.putIfAbsent(target.id(), all.get(0));
        return all.parallelStream()
                .map(mounted -> new ConductanceCurve(mounted, room))
                .toList();
    }

    private SolvedSwitch one(Condition c, Mount made) {
        List<Part> parts = made.parts(c.solved().scale());
        Key key = new Key(parts, c.celsius());
        SolvedSwitch known = solved.get(key);
        if (known == null) {
            known = c.solved().in(parts, bytes -> {});
            solved.put(key, known);
        }
        return known;
    }

    @Override
    public List<Material> metals() {
        return Stream.concat(
                        mount.parts(1).stream().map(Part::material),
                        mount.background().map(b -> b.plate().material()).stream())
                .filter(Material::hasEffect)
                .distinct()
                .toList();
    }

    @Override
    public double floor(Target target) {
        return mount.floor(target);
    }
}
