package eddyreach.engine.core;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import java.util.List;
import java.util.stream.Stream;

/**
 * What stands around a coil and how warm it is.
 *
 * @param celsius temperature of everything, degrees Celsius
 * @param parts core, housing and mount
 */
record Surroundings(double celsius, List<Part> parts) {

    Surroundings {
        parts = List.copyOf(parts);
    }

    /** The switch in free air at the temperature of its trim. */
    static Surroundings freeAir(SwitchModel model) {
        return new Surroundings(Temperature.AMBIENT, model.parts());
    }

    /** The same at another temperature, degrees Celsius. */
    Surroundings at(double other) {
        return new Surroundings(other, parts);
    }

    /** The switch itself with the parts of a mount around it, at this temperature. */
    Surroundings in(SwitchModel model, List<Part> mount) {
        return new Surroundings(
                celsius, Stream.concat(model.parts().stream(), mount.stream()).toList());
    }

    /** Height above the face of the highest metal of the mount, m; 0 where none stands above it. */
    double highest() {
        return mountMetal().mapToDouble(Section::z1).reduce(0, Math::max);
    }

    /** Outer radius of the mount's metal, m; 0 without a mount. */
    double mountRadius() {
        return mountMetal().mapToDouble(Section::r1).reduce(0, Math::max);
    }

    /** Outer radius of everything of the switch itself that the field notices, m. */
    double housingRadius() {
        return parts.stream()
                .filter(p -> p.role() != Role.MOUNT && p.material().hasEffect())
                .mapToDouble(p -> p.section().r1())
                .reduce(0, Math::max);
    }

    private Stream<Section> mountMetal() {
        return parts.stream()
                .filter(p -> p.role() == Role.MOUNT && p.material().hasEffect())
                .map(Part::section);
    }
}
