package eddyreach.field.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.closedform.LayeredPlate;
import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.BodyTarget;
import eddyreach.field.targets.PlateTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/** A plate with a straight edge beside the axis lies between an endless one and one that ends all round at the edge's distance. */
class StraightEdgeTest {

    private static final double OMEGA = 2 * Math.PI * 200e3;
    private static final Band BAND = new Band(OMEGA, 1.15 * OMEGA);
    private static final Resolution COARSE = Resolution.COARSE.withoutFields();

    private static SwitchField coil(Section window, WaveBasis basis, double scale) {
        CoilRegion region = new CoilRegion(window, 100, 0);
        return new SwitchField(List.of(), w -> region, basis, BAND, 20, COARSE, scale);
    }

    private static BodyTarget disc(double radius, double thickness, Material material, WaveBasis basis, double scale) {
        Part part = new Part("disc", Role.TARGET, new Section(0, radius, 0, thickness), material);
        return new BodyTarget(List.of(part), basis, BAND, 20, COARSE, scale);
    }

    /** Loss in a thin sheet with a straight edge in a dipole's field over that in the endless one, as {@code study.StraightEdge} has it. */
    private static double straight(double s) {
        return 0.5 + s / 4 + s * s * s / 4 - 4 / (Math.PI * Math.PI) * (1 - s * s);
    }

    /**
     * The same of a disc whose edge passes at a distance e: the loss of the free currents over it, less that of the stream function that is
     * harmonic and equals theirs, 1 / sqrt(r^2 + h^2), on its edge.
     */
    private static double ofDisc(double radius, double e, double h, int points, int orders) {
        double d = radius - e;
        double covered = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double u = (i + 0.5) / n;
            double r = h * Math.sqrt(u / (1 - u));
            double cosine = (r * r + d * d - radius * radius) / (2 * r * d);
            covered += 2 * u / n * Math.acos(Math.max(-1, Math.min(1, cosine))) / Math.PI;
        }
        double[] f = new double[points];
        for (int j = 0; j < points; j++) {
            double cosine = Math.cos(2 * Math.PI * j / points);
            f[j] = 1 / Math.sqrt(radius * radius + d * d + h * h - 2 * radius * d * cosine);
        }
        double harmonic = 0;
        for (int m = 1; m < orders; m++) {
            double a = 0;
            for (int j = 0; j < points; j++) {
                a += 2 * f[j] * Math.cos(2 * Math.PI * ((long) m * j % points) / points) / points;
            }
            harmonic += Math.PI * m * a * a;
        }
        return covered - harmonic / (Math.PI / (2 * h * h));
    }

    @Test
    void aVeryWideDiscHasAStraightEdge() {
        for (double e : new double[] {0.5, 1, 2}) {
            assertThat(ofDisc(300, e, 1, 8192, 2000)).isCloseTo(straight(e / Math.hypot(e, 1)), within(2e-3));
        }
    }

    /** A disc whose edge passes beside a small coil, by orders about the axis, against the closed form. */
    @Test
    void aThinDiscBesideADipole() {
        double h = 8e-3;
        double radius = 5 * h;
        double thin = 20e-6;
        Section window = new Section(0.4e-3, 0.6e-3, -0.2e-3, 0);
        double gap = h - 0.1e-3 - thin / 2;
        // so thin that its own field is below a thousandth
        Material sheet = ReferenceSwitch.material("sheet", 1e5, 1, 0);
        WaveBasis basis = WaveBasis.of(60, 12 / h);
        SwitchField coil = coil(window, basis, h);
        double endless = coil.at(OMEGA)
                .impedance(new PlateTarget(LayeredPlate.single(1e5, 1, thin), basis).at(OMEGA), gap)
                .getReal();
        BodyTarget wide = disc(radius, thin, sheet, basis, h);
        for (double e : new double[] {0.5 * h, h, 2 * h}) {
            double found =
                    coil.beside(OMEGA, 1e-3).at(wide, radius - e).impedance(gap).getReal() / endless;
            double expected = ofDisc(radius, e, h, 512, 200);
            assertThat(found).isCloseTo(expected, within(2e-3 * expected));
        }
    }

    /** Thin, thick and magnetic: the middle of the bounds with half their distance as a bar holds what a straight edge does. */
    @Test
    void theBarHoldsTheBounds() {
        double scale = 5.5e-3;
        double radius = 4 * scale;
        WaveBasis basis = COARSE.waves(scale, radius, radius - scale);
        SwitchField coil = coil(new Section(2.5e-3, 5.5e-3, -3e-3, -1e-3), basis, scale);
        Material[] materials = {
            ReferenceSwitch.material("resistive", 1e6, 1, 0), ReferenceSwitch.COPPER, ReferenceSwitch.STEEL
        };
        double[] thickness = {0.05e-3, 3e-3, 3e-3};
        for (int i = 0; i < materials.length; i++) {
            BodyTarget wide = disc(radius, thickness[i], materials[i], basis, scale);
            for (double e : new double[] {6e-3, 8e-3, 11e-3}) {
                BodyTarget small = disc(e, thickness[i], materials[i], basis, scale);
                for (double gap : new double[] {1.5e-3, 4e-3}) {
                    Complex whole = coil.at(OMEGA).impedance(wide.at(OMEGA), gap);
                    Complex round = coil.at(OMEGA).impedance(small.at(OMEGA), gap);
                    Complex straight =
                            coil.beside(OMEGA, 1e-3).at(wide, radius - e).impedance(gap);
                    Complex middle = whole.add(round).divide(2);
                    assertThat(straight.subtract(middle).abs())
                            .as("%s, edge at %s m, gap %s m", materials[i].id(), e, gap)
                            .isLessThan(whole.subtract(round).abs() / 2);
                }
            }
        }
    }
}
