package eddyreach.field.axial;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** Similarity of the field equation, and how results move with the resolution. */
class ScaleAndResolutionTest {

    private static final Resolution OVER_REFINED = new Resolution(
            new Fineness(5, 0.01, 0.5, 3, 0.6, 40), new Fineness(5, 0.01, 0.5, 3, 0.6, 40), 36, 36, 1.15, true);

    /** All lengths times 10 and the frequency over 100 leave w mu sigma l^2 alone, so that dZ goes with w l: times 0.1. */
    @Test
    void scaleLaw() {
        InventedSwitch small = InventedSwitch.medium();
        InventedSwitch big = enlarged(small, 10);
        SwitchField smallField = small.field(Resolution.COARSE);
        SwitchField bigField = big.field(Resolution.COARSE);
        Complex ratio = bigField.impedance(big.omega()).divide(smallField.impedance(small.omega()));
        assertThat(ratio.subtract(0.1).abs()).isLessThan(1e-10);
        for (Material m : List.of(ReferenceSwitch.STEEL, ReferenceSwitch.COPPER)) {
            BodyTarget smallTarget = small.target(m, Resolution.COARSE);
            BodyTarget bigTarget = big.target(m, Resolution.COARSE);
            for (int i = 0; i < small.gaps().length; i++) {
                Complex a = smallField.at(small.omega()).impedance(smallTarget.at(small.omega()), small.gaps()[i]);
                Complex b = bigField.at(big.omega()).impedance(bigTarget.at(big.omega()), big.gaps()[i]);
                assertThat(b.divide(a).subtract(0.1).abs()).isLessThan(1e-9);
            }
        }
    }

    private static InventedSwitch enlarged(InventedSwitch s, double factor) {
        List<Part> parts = new ArrayList<>();
        for (Part p : s.parts()) {
            parts.add(new Part(p.name(), p.role(), enlarged(p.section(), factor), p.material()));
        }
        double[] gaps = s.gaps().clone();
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] *= factor;
        }
        CoilRegion coil = new CoilRegion(
                enlarged(s.coil().section(), factor), s.coil().turns(), s.coil().muLoss());
        return new InventedSwitch(
                s.name(),
                parts,
                coil,
                s.scale() * factor,
                s.omega() / (factor * factor),
                s.radius() * factor,
                s.thickness() * factor,
                gaps);
    }

    private static Section enlarged(Section s, double factor) {
        return new Section(s.r0() * factor, s.r1() * factor, s.z0() * factor, s.z1() * factor);
    }

    @Test
    void outerBoundaryIsFarEnough() {
        InventedSwitch s = InventedSwitch.medium();
        Resolution fine = Resolution.FINE;
        Resolution wide = new Resolution(
                doubled(fine.body()), doubled(fine.target()), fine.waves(), fine.reach(), fine.bandwidth(), true);
        SwitchField field = s.field(fine);
        SwitchField wideField = s.field(wide);
        for (Material m : List.of(ReferenceSwitch.STEEL, ReferenceSwitch.COPPER)) {
            BodyTarget target = s.target(m, fine);
            BodyTarget wideTarget = s.target(m, wide);
            for (double gap : s.gaps()) {
                Complex a = field.at(s.omega()).impedance(target.at(s.omega()), gap);
                Complex b = wideField.at(s.omega()).impedance(wideTarget.at(s.omega()), gap);
                // far out |dZ| is a hundredth and feels the boundary more
                double tolerance = gap < 5e-3 ? 1e-4 : 2e-4;
                assertThat(a.subtract(b).abs()).isLessThan(tolerance * a.abs());
            }
        }
    }

    private static Fineness doubled(Fineness f) {
        return new Fineness(f.degree(), f.corner(), f.skin(), f.growth(), f.cap(), 2 * f.far());
    }

    /** The difference of the two resolutions, or 0.1 % where it happens to be less, covers the error of the finer one. */
    @Test
    void differenceOfResolutionsBoundsTheError() {
        for (InventedSwitch s : List.of(InventedSwitch.small(), InventedSwitch.large())) {
            SwitchField coarse = s.field(Resolution.COARSE);
            SwitchField fine = s.field(Resolution.FINE);
            SwitchField over = s.field(OVER_REFINED);
            for (Material m : List.of(ReferenceSwitch.STEEL, ReferenceSwitch.COPPER)) {
                BodyTarget coarseTarget = s.target(m, Resolution.COARSE);
                BodyTarget fineTarget = s.target(m, Resolution.FINE);
                BodyTarget overTarget = s.target(m, OVER_REFINED);
                for (double gap : s.gaps()) {
                    Complex c = coarse.at(s.omega()).impedance(coarseTarget.at(s.omega()), gap);
                    Complex f = fine.at(s.omega()).impedance(fineTarget.at(s.omega()), gap);
                    Complex o = over.at(s.omega()).impedance(overTarget.at(s.omega()), gap);
                    // at contact both miss some of the steepest waves and of their shadow in the target
                    double factor = gap == 0 ? 2 : 1;
                    assertThat(f.subtract(o).abs())
                            .as("%s, %s at %s m", s.name(), m.name(), gap)
                            .isLessThan(Math.max(factor * c.subtract(f).abs(), 1e-3 * o.abs()));
                }
            }
        }
    }
}
