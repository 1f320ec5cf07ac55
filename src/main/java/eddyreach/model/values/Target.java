package eddyreach.model.values;

import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A target, its axis parallel to that of the switch.
 *
 * @param id short name, unique in a study; used in tables and file names
 * @param label readable name
 * @param body what it is
 * @param offset how far its axis lies beside the switch's, m; 0 for a target on the axis
 * @param tolerances of the thickness of each layer of a sheet; empty where it is exact or not known
 */
public record Target(String id, String label, Body body, double offset, List<ThicknessTolerance> tolerances) {

    public Target {
        tolerances = List.copyOf(tolerances);
    }

    /** Of exact thickness. */
    public Target(String id, String label, Body body, double offset) {
        this(id, label, body, offset, List.of());
    }

    /** On the axis of the switch. */
    public Target(String id, String label, Body body) {
        this(id, label, body, 0);
    }

    /** A solid sheet, its layers from the front to the back. */
    public Target(String id, String label, Outline outline, List<Layer> layers) {
        this(id, label, new Body.Sheet(outline, layers, new Texture.Solid()));
    }

    /** Extent of a sheet across the axis. */
    public sealed interface Outline {

        /** Wide enough to count as endless. */
        record Endless() implements Outline {}

        /** A disc of the given diameter, m. */
        record Disc(double diameter) implements Outline {}

        /** A square of the given side, m; on the axis it acts as the disc of equal area. */
        record Square(double side) implements Outline {}

        /** A rectangle of the given sides, m; on the axis it acts about as the disc of equal area. */
        record Rectangle(double width, double height) implements Outline {

            /** Longer side over shorter side. */
            public double aspect() {
                return Math.max(width, height) / Math.min(width, height);
            }
        }

        /** Radius of the disc that stands for the outline, m; infinite for an endless plate. */
        default double equivalentRadius() {
            if (this instanceof Disc d) {
                return d.diameter() / 2;
            }
            if (this instanceof Square s) {
                return s.side() / Math.sqrt(Math.PI);
            }
            if (this instanceof Rectangle r) {
                return Math.sqrt(r.width() * r.height() / Math.PI);
            }
            return Double.POSITIVE_INFINITY;
        }
    }

    /** True when another target is the same for the field, whatever its name. */
    public boolean actsAs(Target other) {
        return body.equals(other.body) && offset == other.offset;
    }

    /** The same target with its axis at another offset, m. */
    public Target beside(double other) {
        return new Target(id, label, body, other, tolerances);
    }

    /** The same of other materials. */
    public Target made(UnaryOperator<Material> change) {
        return new Target(id, label, body.made(change), offset, tolerances);
    }

    /** The layers of a sheet, the one nearest to the switch first; empty for any other body. */
    public List<Layer> layers() {
        return sheet().map(Body.Sheet::layers).orElse(List.of());
    }

    /** What it is if it is a sheet. */
    public Optional<Body.Sheet> sheet() {
        return body instanceof Body.Sheet s ? Optional.of(s) : Optional.empty();
    }

    /** True when none of its materials changes a magnetic field. */
    public boolean withoutEffect() {
        return body.materials().stream().noneMatch(Material::hasEffect);
    }

    /** The first conductor from the front, or the first material when none conducts. */
    public Material front() {
        return body.materials().stream()
                .filter(m -> m.conductivity20() > 0)
                .findFirst()
                .orElse(body.materials().get(0));
    }

    /** Extent along the axis, m. */
    public double thickness() {
        return body.thickness();
    }

    /** Radius of the body, or of the disc that stands for its outline, m; infinite for an endless plate. */
    public double radius() {
        return body.radius();
    }

    /** Its rings with the nearest point in the plane z = 0; empty for a ball and for an endless sheet. */
    public List<Part> parts() {
        return body.parts(id);
    }
}
