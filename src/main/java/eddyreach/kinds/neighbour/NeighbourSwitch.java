package eddyreach.kinds.neighbour;

import eddyreach.coil.WindingResistance;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Field;
import eddyreach.field.axial.Resolution;
import eddyreach.field.join.FarField;
import eddyreach.field.join.SideBySide;
import eddyreach.field.join.SwitchField;
import eddyreach.field.join.TargetField;
import eddyreach.field.targets.FacingSwitch;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.values.SwitchModel;
import java.util.Comparator;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.complex.Complex;

/**
 * Another switch near a solved one, at its resolution, waves and frequencies.
 *
 * <p>Its active element is taken as absent: what its running oscillator does is told by {@link Beats}.
 */
final class NeighbourSwitch {

    private static final double HALF = 0.5;

    private final SolvedSwitch solved;
    private final WindingResistance winding;
    private final SwitchField field;
    private final double capacitance;
    private final double[] section;

    /** What the fields of both give side by side. */
    private record Beside(FarField own, Field ownField, FarField other, Field otherField) {}

    private final Beside beside;

    /**
     * @param solved the first switch
     * @param model the other one
     * @param capacitance of its tank, F
     * @param abreast whether it stands beside the first, which takes fields of both
     */
    NeighbourSwitch(SolvedSwitch solved, SwitchModel model, double capacitance, boolean abreast) {
        this.solved = solved;
        this.capacitance = capacitance;
        winding = new WindingResistance(model.winding());
        if (abreast) {
            double omega = solved.free().omega();
            SwitchField own = solve(
                    solved.model(),
                    solved.scale(),
                    new WindingResistance(solved.model().winding()),
                    true);
            field = model.equals(solved.model()) ? own : solve(model, model.coreRadius(), winding, true);
            FarField first = FarField.of(own, omega);
            FarField second = FarField.of(field, omega);
            beside = new Beside(
                    first,
                    first.around(own.solveFree(omega).field(), AccuracyPolicy.NEIGHBOUR_COMPUTED * solved.scale()),
                    second,
                    second.around(
                            field.solveFree(omega).field(), AccuracyPolicy.NEIGHBOUR_COMPUTED * model.coreRadius()));
        } else {
            field = model.equals(solved.model()) ? solved.field() : solve(model, model.coreRadius(), winding, false);
            beside = null;
        }
        section = radiusAndLength(model);
    }

    private SwitchField solve(SwitchModel m, double scale, WindingResistance w, boolean remote) {
        Resolution r = solved.resolution();
        Resolution taken = remote
                ? new Resolution(r.body(), r.target(), r.waves(), r.reach(), r.bandwidth(), true).remote()
                : r.withoutFields();
        return new SwitchField(
                m.parts(),
                omega -> new CoilRegion(m.winding().section(), m.winding().turns(), w.muLoss(omega, solved.celsius())),
                solved.basis(),
                solved.band(),
                solved.celsius(),
                taken,
                scale);
    }

    /** Radius and length of what acts on fields, m. */
    private static double[] radiusAndLength(SwitchModel model) {
        double radius = model.winding().section().r1();
        double low = model.winding().section().z0();
        for (var part : model.parts()) {
            if (part.material().hasEffect()) {
                Section s = part.section();
                radius = Math.max(radius, s.r1());
                low = Math.min(low, s.z0());
            }
        }
        return new double[] {radius, -low};
    }

    /** Impedance of its coil, ohm. */
    private Complex coil(double omega) {
        return field.impedance(omega).add(winding.besideField(omega, solved.celsius()));
    }

    /** Reactance of the loop of its coil and capacitor, ohm, with its own frequency moved by a factor. */
    private double reactance(double omega, double tuning) {
        return coil(omega).getImaginary() - tuning * tuning / (omega * capacitance);
    }

    /**
     * What its tank adds to the first one's impedance as a coupled circuit, ohm, tuned within a tolerance to where the loss conductance
     * grows most: by {@code Re(dZ (1 + j R/X))} with R + jX the first one's impedance. {@code m / (r + j x)} lies on a circle; with phi the
     * phase of m (1 + j R/X) that is largest at {@code x = r tan(phi/2)}, else at an end of the tolerance.
     *
     * @param m coupling {@code w^2 M^2}, ohm squared
     * @param tolerance largest share by which its frequency may differ
     * @param added what the surroundings add to the impedance of its coil, ohm
     */
    private Complex most(double omega, Complex m, double tolerance, Complex added) {
        Complex first = solved.free().impedance();
        Complex weight = new Complex(1, first.getReal() / first.getImaginary());
        double r = coil(omega).getReal() + added.getReal();
        double low = reactance(omega, 1 + tolerance) + added.getImaginary();
        double high = reactance(omega, 1 - tolerance) + added.getImaginary();
        double best = r * Math.tan(m.multiply(weight).getArgument() / 2);
        return DoubleStream.of(low, high, Math.max(low, Math.min(high, best)))
                .mapToObj(x -> m.divide(new Complex(r, x)))
                .max(Comparator.comparingDouble(dz -> dz.multiply(weight).getReal()))
                .orElseThrow();
    }

    /** Face to face with its coil open. */
    TargetField open() {
        return FacingSwitch.open(field);
    }

    /**
     * Face to face: what it does to the first one's impedance with its tank tuned, within a tolerance, to where it takes most loss, ohm. As
     * a coupled circuit it adds {@code m / (Z + added)} with Z its loop; two values of Z tell m and what its surroundings add to it.
     *
     * @param open what it does with its coil open, ohm
     * @param closed what it does as a target made for a loop, ohm
     */
    Complex tuned(double omega, double tolerance, Complex open, Function<TargetField, Complex> closed) {
        double r = coil(omega).getReal();
        Complex[] loop = {new Complex(r, 0), new Complex(r, 2 * r)};
        Complex[] by = new Complex[loop.length];
        for (int i = 0; i < loop.length; i++) {
            Complex z = loop[i];
            by[i] = closed.apply(FacingSwitch.closed(field, w -> z)).subtract(open);
        }
        Complex apart = by[0].subtract(by[1]);
        if (apart.abs() == 0) {
            return open;
        }
        Complex added =
                by[1].multiply(loop[1]).subtract(by[0].multiply(loop[0])).divide(apart);
        Complex m = by[0].multiply(loop[0].add(added));
        return open.add(most(omega, m, tolerance, added));
    }

    /** Mutual inductance at the frequency without a target, H. */
    Complex mutual(double spacing) {
        double omega = solved.free().omega();
        if (beside != null) {
            return SideBySide.mutual(beside.ownField, beside.otherField, spacing);
        }
        FacingSwitch open = FacingSwitch.open(field);
        return open.mutual(solved.field().at(omega).solve(open.at(omega), spacing), omega);
    }

    /**
     * What the first-order mutual inductance side by side leaves out, as a share of it: from one body to the other, back, and there again. The
     * bodies answer as cylinders or spheres without field inside, (a^2 l/4) or (a^3/2) over the cube of the spacing, either way.
     */
    double rescattering(double spacing) {
        if (beside == null) {
            return 0;
        }
        double cube = spacing * spacing * spacing;
        return answer(radiusAndLength(solved.model())) * answer(section) / (cube * cube);
    }

    private static double answer(double[] body) {
        return Math.max(body[0] * body[0] * body[1] / 4, Math.pow(body[0], 3) / 2);
    }

    /**
     * Side by side: how core and housing of the other one change the first one's impedance, ohm, for one ampere: {@code j w mu0 alpha H^2},
     * with the first one's field at the other's face and the polarisability against fields that die out over half the spacing.
     */
    Complex passive(double omega, double spacing) {
        double h = field(spacing)[0];
        return Complex.I
                .multiply(omega * Material.MU0 * h * h)
                .multiply(FarField.polarisability(field, omega, 2 / spacing));
    }

    /** Error bar of that, ohm: all of what a uniform field of the largest strength, along or (counted twice) across, would make of it. */
    double passiveError(double omega, double spacing) {
        double[] h = field(spacing);
        double most = Math.max(beside.other.polarisability().abs(), 2 * Math.PI * answer(section));
        return omega * Material.MU0 * most * (h[0] * h[0] + 2 * h[1] * h[1]);
    }

    /** Axial field at the other's face and radial field half a spacing behind it, where a dipole's is largest; A/m per ampere. */
    private double[] field(double spacing) {
        double[] r = {spacing};
        var face = beside.ownField.sample(r, new double[] {0});
        var deep = beside.ownField.sample(r, new double[] {-HALF * spacing});
        return new double[] {
            Math.hypot(face.bzRe()[0], face.bzIm()[0]) / Material.MU0,
            Math.hypot(deep.brRe()[0], deep.brIm()[0]) / Material.MU0
        };
    }

    /** Side by side: what its tank adds, {@code w^2 M^2 / Z}, ohm, tuned within a tolerance to where it takes most loss. */
    Complex tank(double omega, Complex mutual, double tolerance) {
        return most(omega, mutual.multiply(mutual).multiply(omega * omega), tolerance, Complex.ZERO);
    }
}
