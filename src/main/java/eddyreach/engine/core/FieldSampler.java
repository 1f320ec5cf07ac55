package eddyreach.engine.core;

import eddyreach.field.axial.MeshField;
import eddyreach.field.axial.Solved;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Samples field solutions on the grids that pictures are drawn from. */
public final class FieldSampler {

    private static final int COLUMNS = 121;
    private static final int ROWS = 161;
    /** Half width of the picture of a mount, in diameters of the face: the same for all, so that they compare. */
    private static final double MOUNT_REACH = 1.6;

    /** The picture ends so little before an endless background. */
    private static final double BEFORE = 1 - 1e-9;

    private static final int CURRENT_COLUMNS = 161;
    private static final int CURRENT_ROWS = 61;
    private static final double SKINS_SHOWN = 6;

    /** Depth of a target that is drawn, in face diameters. */
    private static final double DEEPEST = 1.2;

    private FieldSampler() {}

    /** The field without a target. */
    public static FieldPicture free(WorkingPoint at) {
        SwitchModel model = at.solved().model();
        double[] r = radii(model, 0);
        double[] z = heights(model, 1.2 * model.faceDiameter() / 2);
        return picture(at, "without-target", Optional.empty(), r, z, List.of(), Optional.empty());
    }

    /**
     * The field in a mount without a target, but with the mount's background; up to that if it is endless and has no field behind.
     *
     * @param top upper end of the picture, m
     */
    public static FieldPicture mounted(WorkingPoint at, Mount mount, double top) {
        SwitchModel model = at.solved().model();
        double face = model.faceDiameter();
        double[] r = steps(0, MOUNT_REACH * face, COLUMNS);
        double[] z = steps(-face, at.behind().isPresent() ? top : Math.min(top, BEFORE * at.distance()), ROWS);
        List<Part> background = at.behind().isEmpty()
                ? List.of()
                : mount.background().stream()
                        .flatMap(b -> b.plate().asTarget().parts().stream().map(p -> p.shifted(b.distance())))
                        .toList();
        return picture(at, mount.id(), Optional.empty(), r, z, background, Optional.empty());
    }

    /** The field with a bounded target. */
    public static FieldPicture with(WorkingPoint at, Target target) {
        SwitchModel model = at.solved().model();
        List<Part> parts = target.body().parts(target.label()).stream()
                .map(p -> p.shifted(at.distance()))
                .toList();
        double[] r = radii(model, target.radius());
        double face = model.faceDiameter();
        double[] z = heights(model, at.distance() + Math.min(target.thickness(), DEEPEST * face) + 0.3 * face);
        Optional<FieldPicture.Ball> ball = target.body() instanceof Body.Ball b
                ? Optional.of(new FieldPicture.Ball(
                        target.label(),
                        at.distance() + b.radius(),
                        b.radius(),
                        b.material().permeability().abs()))
                : Optional.empty();
        return picture(at, target.id(), Optional.of(target.label()), r, z, parts, ball);
    }

    private static double[] radii(SwitchModel model, double target) {
        double reach = Math.max(0.75 * model.faceDiameter(), Math.min(1.15 * target, model.faceDiameter()));
        return steps(0, reach, COLUMNS);
    }

    private static double[] heights(SwitchModel model, double top) {
        return steps(-0.55 * model.faceDiameter(), top, ROWS);
    }

    private static double[] steps(double from, double to, int n) {
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = from + (to - from) * i / (n - 1);
        }
        return x;
    }

    private static FieldPicture picture(
            WorkingPoint at,
            String id,
            Optional<String> name,
            double[] r,
            double[] z,
            List<Part> target,
            Optional<FieldPicture.Ball> ball) {
        SwitchModel model = at.solved().model();
        double[][] flux = new double[z.length][];
        double[][] strength = new double[z.length][];
        List<Part> parts = new ArrayList<>(at.solved().parts());
        parts.addAll(target);
        int split = (int) DoubleStream.of(z).filter(h -> h < at.distance()).count();
        double plane = at.solved().plane();
        double[] before = DoubleStream.of(z).limit(split).map(h -> h - plane).toArray();
        fill(at.before().field().sample(r, before), r, z, 0, split, parts, ball, flux, strength);
        if (split < z.length) {
            double[] behind =
                    DoubleStream.of(z).skip(split).map(h -> h - at.distance()).toArray();
            fill(
                    at.behind().orElseThrow().field().sample(r, behind),
                    r,
                    z,
                    split,
                    z.length,
                    parts,
                    ball,
                    flux,
                    strength);
        }
        return new FieldPicture(
                id, name, r, z, flux, strength, parts, model.winding().section(), ball);
    }

    private static void fill(
            MeshField.Samples s,
            double[] r,
            double[] z,
            int from,
            int to,
            List<Part> parts,
            Optional<FieldPicture.Ball> ball,
            double[][] flux,
            double[][] strength) {
        int at = 0;
        for (int j = from; j < to; j++) {
            flux[j] = new double[r.length];
            strength[j] = new double[r.length];
            for (int i = 0; i < r.length; i++, at++) {
                flux[j][i] = 2 * Math.PI * r[i] * s.aRe()[at];
                double b = Math.sqrt(s.brRe()[at] * s.brRe()[at]
                        + s.brIm()[at] * s.brIm()[at]
                        + s.bzRe()[at] * s.bzRe()[at]
                        + s.bzIm()[at] * s.bzIm()[at]);
                strength[j][i] = b / (Material.MU0 * permeability(parts, ball, r[i], z[j]));
            }
        }
    }

    private static double permeability(List<Part> parts, Optional<FieldPicture.Ball> ball, double r, double z) {
        if (ball.isPresent() && ball.get().contains(r, z)) {
            return ball.get().permeability();
        }
        for (Part p : parts) {
            if (p.section().contains(r, z)) {
                return p.material().permeability().abs();
            }
        }
        return 1;
    }

    /** The eddy currents in a bounded target; none of a ball, whose skin would hide in the steps of a grid. */
    public static Optional<CurrentPicture> currents(WorkingPoint at, Target target) {
        return at.behind()
                .map(Solved::field)
                .filter(MeshField.class::isInstance)
                .map(field -> currents(at, (MeshField) field, target));
    }

    private static CurrentPicture currents(WorkingPoint at, MeshField field, Target target) {
        double omega = at.omega();
        double[] r = steps(0, at.solved().fields().reach(target), CURRENT_COLUMNS);
        double[] z = steps(0, shown(target, omega), CURRENT_ROWS);
        double[] drive = field.drive(r, z);
        List<Part> parts = target.parts();
        double[][] density = new double[z.length][r.length];
        for (int j = 0; j < z.length; j++) {
            for (int i = 0; i < r.length; i++) {
                double sigma = conductivity(parts, r[i], z[j]);
                density[j][i] = omega * sigma * drive[j * r.length + i];
            }
        }
        List<CurrentPicture.Skin> skins = parts.stream()
                .filter(p -> p.material().conductivity20() > 0)
                .map(p -> new CurrentPicture.Skin(
                        p.material().name(), p.section(), p.material().skinDepth(omega, Temperature.AMBIENT)))
                .toList();
        return new CurrentPicture(target.id(), target.label(), omega / (2 * Math.PI), skins, r, z, density);
    }

    /**
     * Depth worth showing, m: beyond six skin depths 0.25 % of the current density are left. They are counted through the widest conductor at
     * each depth, so that a thin plating does not decide over what lies below it.
     */
    private static double shown(Target target, double omega) {
        double[] borders = target.parts().stream()
                .flatMapToDouble(
                        p -> DoubleStream.of(p.section().z0(), p.section().z1()))
                .sorted()
                .distinct()
                .toArray();
        double left = SKINS_SHOWN;
        for (int i = 0; i + 1 < borders.length; i++) {
            double middle = (borders[i] + borders[i + 1]) / 2;
            double skin = target.parts().stream()
                    .filter(p -> p.material().conductivity20() > 0)
                    .filter(p ->
                            p.section().z0() < middle && middle < p.section().z1())
                    .max(Comparator.comparingDouble(
                            p -> p.section().r1() - p.section().r0()))
                    .map(p -> p.material().skinDepth(omega, Temperature.AMBIENT))
                    .orElse(Double.POSITIVE_INFINITY);
            double passed = (borders[i + 1] - borders[i]) / skin;
            if (passed > left) {
                return Math.min(target.thickness(), borders[i] + left * skin);
            }
            left -= passed;
        }
        return target.thickness();
    }

    private static double conductivity(List<Part> parts, double r, double z) {
        for (Part p : parts) {
            if (p.section().contains(r, z)) {
                return p.material().conductivity(Temperature.AMBIENT);
            }
        }
        return 0;
    }
}
