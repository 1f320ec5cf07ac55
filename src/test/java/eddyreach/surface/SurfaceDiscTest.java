package eddyreach.surface;

import static eddyreach.surface.Metals.MM;
import static eddyreach.surface.Metals.OMEGA;
import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.OffAxisJoin;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A polygon of many corners with the area of a disc, against the exact azimuthal orders of the disc: quite another method, with the skin resolved. */
class SurfaceDiscTest {

    private static final double[] OFFSETS = {0, 6 * MM, 10 * MM};
    private static final WaveBasis BASIS = Metals.waves(32);

    /** Deviation in shares of |dZ|, largest of three offsets and two distances. */
    private static double worst(Material metal, double radius, double thickness, int corners, Fineness fineness) {
        OffAxisJoin join = Metals.coil(BASIS);
        Part part = new Part("disc", Role.TARGET, new Section(0, radius, 0, thickness), metal);
        BodyTarget exact = new BodyTarget(
                List.of(part),
                BASIS,
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                Resolution.COARSE.withoutFields(),
                Metals.RADIUS);
        SurfaceBody body = new SurfaceBody(
                List.of(Prism.upright(Outline.round(corners, radius), thickness)), fineness, BASIS, 12, MM);
        CoupledReflection reflection = body.at(OMEGA, metal, 20);
        double worst = 0;
        for (double offset : OFFSETS) {
            for (double gap : new double[] {1.5 * MM, 3.5 * MM}) {
                Complex expected = join.at(exact, offset).impedance(gap);
                Complex found = reflection.before(join, offset, 0).impedance(gap);
                worst = Math.max(worst, Metals.off(found, expected));
            }
        }
        return worst;
    }

    /**
     * 0.5 % of |dZ| was the aim, and all but three cases are below 0.35 %. Foil misses it by 0.15 % and aluminium by 0.1 %. Metal about a skin depth thick misses it 10 mm beside, right at its edge: at 1 mm thickness that is no longer small
     * against the 3 mm over which the coil's field changes, so that the edge's universal depth ({@link RimDepth}) is not all there is.
     */
    @ParameterizedTest
    @CsvSource({
        "steel, 6e6, 150, 10.155, 1, 0.3",
        "aluminium, 35e6, 1, 10.155, 1, 0.7",
        "stainless, 1.39e6, 1, 10.155, 1, 2.9",
        "stainless, 1.39e6, 1, 10.155, 0.2, 0.5",
        "brass, 15.9e6, 1, 10.155, 0.5, 0.6",
        "foil, 35e6, 1, 10.155, 0.02, 0.8",
        "copper, 58e6, 1, 7, 0.3, 0.7",
        "iron, 10e6, 1000, 7, 0.5, 0.6",
    })
    void polygonIsTheDisc(String name, double sigma, double mu, double radius, double thickness, double percent) {
        Material metal = Metals.material(name, sigma, mu);
        double off = worst(metal, radius * MM, thickness * MM, 32, new Fineness(0.3 * MM, 3, 3 * MM));
        assertThat(100 * off).isLessThan(percent);
    }

    /** Sixteen corners do nearly as well as many. */
    @Test
    void moreCornersChangeLittle() {
        double few = worst(Metals.STEEL, 10.155 * MM, MM, 16, new Fineness(0.3 * MM, 3, 3 * MM));
        double many = worst(Metals.STEEL, 10.155 * MM, MM, 48, new Fineness(0.3 * MM, 3, 3 * MM));
        assertThat(many).isLessThan(3e-3);
        assertThat(few).isLessThan(4e-3);
    }
}
