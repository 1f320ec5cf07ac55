package eddyreach.engine.assure;

import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/** A target with one thing changed. */
public final class Variants {

    private Variants() {}

    /** With its conductivity times a factor. */
    static Target conductivity(Target target, double factor) {
        return of(target, m -> conducting(m, factor));
    }

    /** With the conductivity that it has at a temperature, degrees Celsius, whatever the temperature of the switch. */
    static Target at(Target target, double celsius) {
        return of(target, m -> m.heldAt(celsius));
    }

    /** With another permeability of its magnetic conductors. */
    static Target permeability(Target target, ToDoubleFunction<Material> permeability) {
        return of(target, m -> permeable(m, permeability));
    }

    /** True when one of its materials has a permeability that is only assumed. */
    static boolean assumed(Target target) {
        return target.body().materials().stream().anyMatch(Variants::assumed);
    }

    /** True for a magnetic conductor. */
    static boolean assumed(Material m) {
        return m.muReal() > 1 && m.conductivity20() > 0;
    }

    /** True when the permeability of one of its materials is stated as a range. */
    static boolean ranged(Target target) {
        return target.body().materials().stream().anyMatch(m -> m.range().isPresent());
    }

    /** Its only layer, if it is a sheet of one layer. */
    static Optional<Layer> single(Target target) {
        return target.layers().size() == 1 ? Optional.of(target.layers().get(0)) : Optional.empty();
    }

    /** A sheet as one layer, any other body with all that has an effect of one material. */
    static Target made(Target target, Material material, double thickness) {
        return target.sheet()
                .map(s -> with(
                        target,
                        new Body.Sheet(s.outline(), List.of(new Layer(material, thickness)), new Texture.Solid())))
                .orElseGet(() -> of(target, m -> m.hasEffect() ? material : m));
    }

    /** Without its slits; empty for what has none. */
    static Optional<Target> closed(Target target) {
        return target.body() instanceof Body.Rings r && r.rings().stream().anyMatch(Ring::slit)
                ? Optional.of(with(
                        target,
                        new Body.Rings(r.rings().stream()
                                .map(x -> new Ring(x.name(), x.section(), x.material(), false))
                                .toList())))
                : Optional.empty();
    }

    /** With all layers thicker by a factor; empty for what is no sheet. */
    public static Optional<Target> thickness(Target target, double factor) {
        return target.sheet().map(s -> {
            List<Layer> layers = s.layers().stream()
                    .map(l -> new Layer(l.material(), factor * l.thickness()))
                    .toList();
            return with(target, new Body.Sheet(s.outline(), layers, s.texture()));
        });
    }

    /** With one of its layers thicker by a factor; as it is where that is no sheet. */
    static Target layer(Target target, int index, double factor) {
        return target.sheet()
                .map(s -> {
                    List<Layer> layers = new ArrayList<>(s.layers());
                    Layer l = layers.get(index);
                    layers.set(index, new Layer(l.material(), factor * l.thickness()));
                    return with(target, new Body.Sheet(s.outline(), layers, s.texture()));
                })
                .orElse(target);
    }

    /** Wider by a factor, a ball larger; empty for what is endless. */
    static Optional<Target> size(Target target, double factor) {
        if (target.body() instanceof Body.Ball b) {
            return Optional.of(with(target, new Body.Ball(factor * b.diameter(), b.material())));
        }
        if (target.body() instanceof Body.Rings r) {
            return Optional.of(with(
                    target,
                    new Body.Rings(r.rings().stream().map(x -> wider(x, factor)).toList())));
        }
        Target.Outline outline = target.sheet().orElseThrow().outline();
        if (outline instanceof Target.Outline.Disc d) {
            return Optional.of(outline(target, new Target.Outline.Disc(factor * d.diameter())));
        }
        if (outline instanceof Target.Outline.Square s) {
            return Optional.of(outline(target, new Target.Outline.Square(factor * s.side())));
        }
        if (outline instanceof Target.Outline.Rectangle r) {
            return Optional.of(outline(target, new Target.Outline.Rectangle(factor * r.width(), factor * r.height())));
        }
        return Optional.empty();
    }

    private static Ring wider(Ring ring, double factor) {
        Section s = ring.section();
        return new Ring(
                ring.name(),
                new Section(factor * s.r0(), factor * s.r1(), s.z0(), s.z1()),
                ring.material(),
                ring.slit());
    }

    /** A sheet with another outline. */
    static Target outline(Target sheet, Target.Outline outline) {
        Body.Sheet s = sheet.sheet().orElseThrow();
        return with(sheet, new Body.Sheet(outline, s.layers(), s.texture()));
    }

    private static Target with(Target target, Body body) {
        return new Target(target.id(), target.label(), body, target.offset(), target.tolerances());
    }

    private static Target of(Target target, UnaryOperator<Material> change) {
        return target.made(change);
    }

    /** A material with its conductivity times a factor. */
    static Material conducting(Material m, double factor) {
        return m.conducting(factor * m.conductivity20());
    }

    /** A material with another permeability if it is a magnetic conductor. */
    static Material permeable(Material m, ToDoubleFunction<Material> permeability) {
        return assumed(m) ? m.magnetic(permeability.applyAsDouble(m), m.muImag()) : m;
    }
}
