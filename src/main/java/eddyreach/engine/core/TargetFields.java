package eddyreach.engine.core;

import eddyreach.closedform.LayeredPlate;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.OffAxisTarget;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.field.targets.PlateTarget;
import eddyreach.field.targets.SphereTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import java.util.List;

/**
 * Makes the field problems of targets, each by the cheapest way that is exact enough.
 *
 * @param basis waves between switch and target
 * @param band angular frequencies to cover
 * @param celsius temperature, degrees Celsius
 * @param scale radius of the coil's core, m
 */
public record TargetFields(WaveBasis basis, Band band, double celsius, double scale) {

    /** Radius of the disc whose operator needs as many waves as a target's, m; 0 when they serve as they are. */
    static double width(Target target, double scale) {
        if (target.body() instanceof Body.Ball ball) {
            // its ridge along k = k' is about sqrt(2k/a) wide, a disc's 1/radius; so taken, 100 mm before a core of 7
            // mm is right to 1e-8
            return Math.sqrt(scale * ball.radius());
        }
        return OffsetLimit.endless(target, scale) ? 0 : Math.min(target.radius(), within(target, scale));
    }

    /** The largest offset that the waves must resolve for a target, m: none for what is endless or not noticed. */
    static double offset(Target target, double scale) {
        return OffsetLimit.endless(target, scale) || OffsetLimit.unseen(target, scale) ? 0 : target.offset();
    }

    /** How far from its axis a target must be computed, m: what lies farther out is farther than {@link OffsetLimit#ENDLESS} from the switch. */
    private static double within(Target target, double scale) {
        return OffsetLimit.ENDLESS * scale + target.offset();
    }

    /** The field problem of a target where it stands. */
    PlacedTarget of(Target target, Resolution resolution) {
        return beside(target, about(target, resolution), target.offset());
    }

    /** A target at an offset, m, not above that which its field problem was made for. */
    public PlacedTarget beside(Target target, TargetField own, double offset) {
        if (OffsetLimit.unseen(target.beside(offset), scale)) {
            return nothing();
        }
        return offset > 0 && !endless(target) ? new OffAxisTarget(own, offset) : own;
    }

    private TargetField nothing() {
        return omega -> new Reflection.Diagonal(new double[basis.size()], new double[basis.size()]);
    }

    /** The field problem about the target's own axis, made to serve up to its offset. */
    TargetField about(Target target, Resolution resolution) {
        if (target.withoutEffect()) {
            return nothing();
        }
        if (endless(target)) {
            return new PlateTarget(plate(target, celsius), basis);
        }
        if (target.body() instanceof Body.Ball ball) {
            return new SphereTarget(target.id(), ball.radius(), ball.material(), basis, celsius);
        }
        List<Part> parts = within(target);
        if (parts.stream().noneMatch(p -> p.material().hasEffect())) {
            return nothing();
        }
        return new BodyTarget(parts, basis, band, celsius, resolution, scale);
    }

    /** True when a sheet is endless or so wide that its edge does not matter. */
    public boolean endless(Target target) {
        return OffsetLimit.endless(target, scale);
    }

    /** True for a radius, m, from which on a target's edge does not matter. */
    public boolean wide(double radius) {
        return radius > OffsetLimit.ENDLESS * scale;
    }

    /** True when a body of rings reaches so far out that it is cut off where it does not matter. */
    boolean cut(Target target) {
        return target.body() instanceof Body.Rings && target.radius() > within(target, scale);
    }

    /** Radius up to which a bounded target is computed, m. */
    double reach(Target target) {
        return cut(target) ? within(target, scale) : target.radius();
    }

    private List<Part> within(Target target) {
        double most = within(target, scale);
        return target.parts().stream()
                .filter(p -> p.section().r0() < most)
                .map(p -> {
                    Section s = p.section();
                    Section kept = new Section(s.r0(), Math.min(most, s.r1()), s.z0(), s.z1());
                    return new Part(p.name(), p.role(), kept, p.material(), p.slit());
                })
                .toList();
    }

    /** The layers of a sheet at a temperature, degrees Celsius. */
    public static LayeredPlate plate(Target target, double celsius) {
        int n = target.layers().size();
        double[] sigma = new double[n];
        double[] muRe = new double[n];
        double[] muIm = new double[n];
        double[] thickness = new double[n];
        for (int i = 0; i < n; i++) {
            var layer = target.layers().get(i);
            sigma[i] = layer.material().conductivity(celsius);
            muRe[i] = layer.material().muReal();
            muIm[i] = layer.material().muImag();
            thickness[i] = layer.thickness();
        }
        return new LayeredPlate(sigma, muRe, muIm, thickness);
    }
}
