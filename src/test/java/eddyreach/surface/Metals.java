package eddyreach.surface;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.CoilRegion;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.OffAxisJoin;
import eddyreach.field.join.SwitchField;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/** The air coil and the metals of these tests. */
final class Metals {

    static final double MM = 1e-3;
    static final double OMEGA = 2 * Math.PI * 200e3;
    static final double RADIUS = 5.5 * MM;
    static final Material STEEL = material("steel", 6e6, 150);
    static final Material ALUMINIUM = material("aluminium", 35e6, 1);
    static final Material STAINLESS = material("stainless", 1.39e6, 1);
    static final Material PERFECT = material("perfect", 1e15, 1);
    static final CoilRegion COIL = new CoilRegion(new Section(3.3 * MM, 5.5 * MM, -3.1 * MM, -0.8 * MM), 80, 0);

    private Metals() {}

    static Material material(String name, double sigma, double mu) {
        return new Material(name, name, sigma, 0, mu, 0, "test");
    }

    /** An air coil: nothing is reflected twice. */
    static OffAxisJoin coil(WaveBasis basis) {
        return new SwitchField(
                        List.of(),
                        w -> COIL,
                        basis,
                        new Band(OMEGA, 1.15 * OMEGA),
                        20,
                        Resolution.COARSE.withoutFields(),
                        RADIUS)
                .beside(OMEGA);
    }

    static WaveBasis waves(int count) {
        return WaveBasis.of(count, 20 / RADIUS);
    }

    static double off(Complex value, Complex expected) {
        return value.subtract(expected).abs() / expected.abs();
    }
}
