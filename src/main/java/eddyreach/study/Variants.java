package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.Layer;
import eddyreach.model.Target;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/** A target with one thing changed. */
final class Variants {

    private Variants() {}

    /** With its conductivity times a factor. */
    static Target conductivity(Target target, double factor) {
        return of(target, m -> conducting(m, factor * m.conductivity20(), m.temperatureCoefficient()));
    }

    /** With the conductivity that it has at a temperature, degrees Celsius, whatever the temperature of the bench. */
    static Target at(Target target, double celsius) {
        return of(target, m -> conducting(m, m.conductivity(celsius), 0));
    }

    /** With another permeability of its magnetic conductors. */
    static Target permeability(Target target, ToDoubleFunction<Material> permeability) {
        return of(target, m -> assumed(m) ? permeable(m, permeability.applyAsDouble(m)) : m);
    }

    /** True when one of its materials has a permeability that is only assumed. */
    static boolean assumed(Target target) {
        return target.layers().stream().map(Layer::material).anyMatch(Variants::assumed);
    }

    private static boolean assumed(Material m) {
        return m.muReal() > 1 && m.conductivity20() > 0;
    }

    /** Its only layer, if it is a sheet of one layer. */
    static Optional<Layer> single(Target target) {
        return target.layers().size() == 1 ? Optional.of(target.layers().get(0)) : Optional.empty();
    }

    /** Of one layer. */
    static Target layer(Target target, Material material, double thickness) {
        return new Target(target.id(), target.label(), target.outline(), List.of(new Layer(material, thickness)));
    }

    /** With all layers thicker by a factor. */
    static Target thickness(Target target, double factor) {
        List<Layer> layers = target.layers().stream()
                .map(l -> new Layer(l.material(), factor * l.thickness()))
                .toList();
        return new Target(target.id(), target.label(), target.outline(), layers);
    }

    /** Wider by a factor; empty for what is endless. */
    static Optional<Target> size(Target target, double factor) {
        if (target.outline() instanceof Target.Outline.Disc d) {
            return Optional.of(outline(target, new Target.Outline.Disc(factor * d.diameter())));
        }
        if (target.outline() instanceof Target.Outline.Square s) {
            return Optional.of(outline(target, new Target.Outline.Square(factor * s.side())));
        }
        return Optional.empty();
    }

    /** With another outline. */
    static Target outline(Target target, Target.Outline outline) {
        return new Target(target.id(), target.label(), outline, target.layers());
    }

    private static Target of(Target target, UnaryOperator<Material> change) {
        List<Layer> layers = target.layers().stream()
                .map(l -> new Layer(change.apply(l.material()), l.thickness()))
                .toList();
        return new Target(target.id(), target.label(), target.outline(), layers);
    }

    private static Material conducting(Material m, double conductivity20, double coefficient) {
        return new Material(m.id(), m.name(), conductivity20, coefficient, m.muReal(), m.muImag(), m.source());
    }

    private static Material permeable(Material m, double mu) {
        return new Material(
                m.id(), m.name(), m.conductivity20(), m.temperatureCoefficient(), mu, m.muImag(), m.source());
    }
}
