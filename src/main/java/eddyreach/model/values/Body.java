package eddyreach.model.values;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/** What a target is, apart from its name: on the axis, its nearest point in the plane z = 0. */
public sealed interface Body {

    /** Its materials from the front to the back, as often as they occur. */
    List<Material> materials();

    /** Extent along the axis, m. */
    double thickness();

    /** Radius of the body, or of the disc that stands for its outline, m; infinite for an endless plate. */
    double radius();

    /**
     * Its rings.
     *
     * @param id name of the target, from which the parts get theirs
     * @return empty for a ball, which is no ring, and for an endless sheet
     */
    List<Part> parts(String id);

    /** The same of other materials. */
    Body made(UnaryOperator<Material> change);

    /**
     * A flat stack of layers.
     *
     * @param outline how far it extends across the axis
     * @param layers its layers, the one nearest to the switch first; of a perforated sheet or a mesh with the conductivity of the
     *     solid sheet that stands for it
     * @param texture what the sheet is in truth
     */
    record Sheet(Target.Outline outline, List<Layer> layers, Texture texture) implements Body {

        public Sheet {
            layers = List.copyOf(layers);
        }

        @Override
        public List<Material> materials() {
            return layers.stream().map(Layer::material).toList();
        }

        @Override
        public double thickness() {
            return layers.stream().mapToDouble(Layer::thickness).sum();
        }

        @Override
        public double radius() {
            return outline.equivalentRadius();
        }

        @Override
        public List<Part> parts(String id) {
            if (Double.isInfinite(radius())) {
                return List.of();
            }
            List<Part> parts = new ArrayList<>();
            double z = 0;
            for (int i = 0; i < layers.size(); i++) {
                Layer layer = layers.get(i);
                String name = layers.size() == 1 ? id : id + " layer " + (i + 1);
                Section section = new Section(0, radius(), z, z + layer.thickness());
                parts.add(new Part(name, Role.TARGET, section, layer.material()));
                z += layer.thickness();
            }
            return parts;
        }

        @Override
        public Sheet made(UnaryOperator<Material> change) {
            List<Layer> changed = layers.stream()
                    .map(l -> new Layer(change.apply(l.material()), l.thickness()))
                    .toList();
            return new Sheet(outline, changed, texture);
        }
    }

    /**
     * Rings about the axis, such as a washer, a tube or a screw.
     *
     * @param rings its rings without overlap, at least one, the least z being 0
     */
    record Rings(List<Ring> rings) implements Body {

        /** Sorts the rings from the front to the back. */
        public Rings {
            rings = rings.stream()
                    .sorted(Comparator.comparingDouble(r -> r.section().z0()))
                    .toList();
        }

        @Override
        public List<Material> materials() {
            return rings.stream().map(Ring::material).toList();
        }

        @Override
        public double thickness() {
            return rings.stream().mapToDouble(r -> r.section().z1()).max().orElse(0);
        }

        @Override
        public double radius() {
            return rings.stream().mapToDouble(r -> r.section().r1()).max().orElse(0);
        }

        @Override
        public List<Part> parts(String id) {
            return rings.stream()
                    .map(r -> new Part(
                            rings.size() == 1 ? id : id + " " + r.name(),
                            Role.TARGET,
                            r.section(),
                            r.material(),
                            r.slit()))
                    .toList();
        }

        @Override
        public Rings made(UnaryOperator<Material> change) {
            return new Rings(rings.stream()
                    .map(r -> new Ring(r.name(), r.section(), change.apply(r.material()), r.slit()))
                    .toList());
        }
    }

    /**
     * A solid ball.
     *
     * @param diameter its diameter, m
     * @param material what it is made of
     */
    record Ball(double diameter, Material material) implements Body {

        /**
         * Discs of equal thickness that stand for it, each of the volume of its slice.
         *
         * @param id name of the target, from which the parts get theirs
         * @param steps number of discs
         */
        public List<Part> stepped(String id, int steps) {
            List<Part> parts = new ArrayList<>();
            for (int i = 0; i < steps; i++) {
                double from = diameter * i / steps;
                double to = diameter * (i + 1) / steps;
                // mean of z (d - z), the square of the radius at z
                double square = diameter * (from + to) / 2 - (from * from + from * to + to * to) / 3;
                parts.add(new Part(
                        id + " step " + (i + 1), Role.TARGET, new Section(0, Math.sqrt(square), from, to), material));
            }
            return parts;
        }

        @Override
        public List<Material> materials() {
            return List.of(material);
        }

        @Override
        public double thickness() {
            return diameter;
        }

        @Override
        public double radius() {
            return diameter / 2;
        }

        @Override
        public List<Part> parts(String id) {
            return List.of();
        }

        @Override
        public Ball made(UnaryOperator<Material> change) {
            return new Ball(diameter, change.apply(material));
        }
    }
}
