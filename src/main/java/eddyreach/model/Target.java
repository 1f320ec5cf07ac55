package eddyreach.model;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import java.util.ArrayList;
import java.util.List;

/**
 * A target on the axis.
 *
 * @param id short name, unique in a study; used in tables and file names
 * @param label readable name
 * @param outline how far it extends across the axis
 * @param layers its layers, the one nearest to the switch first
 */
public record Target(String id, String label, Outline outline, List<Layer> layers) {

    public Target {
        layers = List.copyOf(layers);
    }

    /** Extent of a target across the axis. */
    public sealed interface Outline {

        /** Wide enough to count as endless. */
        record Endless() implements Outline {}

        /** A disc of the given diameter, m. */
        record Disc(double diameter) implements Outline {}

        /** A square of the given side, m; on the axis it acts as the disc of equal area. */
        record Square(double side) implements Outline {}

        /** Radius of the disc that stands for the outline, m; infinite for an endless plate. */
        default double equivalentRadius() {
            if (this instanceof Disc d) {
                return d.diameter() / 2;
            }
            if (this instanceof Square s) {
                return s.side() / Math.sqrt(Math.PI);
            }
            return Double.POSITIVE_INFINITY;
        }
    }

    /** True when another target is the same for the field, whatever its name. */
    public boolean actsAs(Target other) {
        return layers.equals(other.layers) && outline.equals(other.outline);
    }

    /** Total thickness, m. */
    public double thickness() {
        return layers.stream().mapToDouble(Layer::thickness).sum();
    }

    /** The layers as discs with the near face in the plane z = 0; only for a bounded outline. */
    public List<Part> parts() {
        double radius = outline.equivalentRadius();
        List<Part> parts = new ArrayList<>();
        double z = 0;
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            String name = layers.size() == 1 ? id : id + " layer " + (i + 1);
            parts.add(new Part(name, Role.TARGET, new Section(0, radius, z, z + layer.thickness()), layer.material()));
            z += layer.thickness();
        }
        return parts;
    }
}
