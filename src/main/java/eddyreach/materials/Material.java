package eddyreach.materials;

import java.util.Optional;
import org.apache.commons.math3.complex.Complex;

/**
 * A linear, isotropic material.
 *
 * <p>Relative permeability is {@code mu_r = muReal - j muImag} (time factor exp(+j w t), so losses make the
 * imaginary part negative). Conductivity follows {@code sigma(T) = sigma20 / (1 + alpha (T - 20 C))}, for a negative alpha (liquids,
 * carbon) {@code sigma20 (1 - alpha (T - 20 C))}, the same to first order, which stays finite and positive for any temperature of a switch.
 *
 * @param id key in the materials file
 * @param name readable name
 * @param conductivity20 conductivity at 20 C, S/m; 0 for an insulator
 * @param temperatureCoefficient temperature coefficient of resistivity at 20 C, 1/K
 * @param muReal real part of the relative permeability, at least 1
 * @param muImag loss part of the relative permeability, not negative
 * @param source where the values come from
 * @param specimen the state it is in, which decides the conductivity in effect and leaves the table values as they are
 * @param range within which its permeability is only known to lie; empty where one value is stated
 */
public record Material(
        String id,
        String name,
        double conductivity20,
        double temperatureCoefficient,
        double muReal,
        double muImag,
        String source,
        Specimen specimen,
        Optional<PermeabilityRange> range) {

    /** Of one permeability. */
    public Material(
            String id,
            String name,
            double conductivity20,
            double temperatureCoefficient,
            double muReal,
            double muImag,
            String source,
            Specimen specimen) {
        this(id, name, conductivity20, temperatureCoefficient, muReal, muImag, source, specimen, Optional.empty());
    }

    /** Plain: solid and as warm as what is around it. */
    public Material(
            String id,
            String name,
            double conductivity20,
            double temperatureCoefficient,
            double muReal,
            double muImag,
            String source) {
        this(id, name, conductivity20, temperatureCoefficient, muReal, muImag, source, Specimen.PLAIN);
    }

    /** Magnetic constant, H/m: the value before 2019, which differs from CODATA 2018 by 5.5e-10 relative. */
    public static final double MU0 = 4e-7 * Math.PI;

    /** Air, or anything without effect on the field. */
    public static final Material AIR = new Material("air", "air", 0, 0, 1, 0, "definition");

    /** The same held at a temperature, degrees Celsius, whatever that of its surroundings; one that is held already stays so. */
    public Material heldAt(double celsius) {
        return specimen.held() ? this : in(id, name, source, new Specimen(celsius, specimen.sheetFactor()));
    }

    /** The same in another state, under names that tell of it. */
    public Material in(String otherId, String otherName, String otherSource, Specimen state) {
        return new Material(
                otherId, otherName, conductivity20, temperatureCoefficient, muReal, muImag, otherSource, state, range);
    }

    /** The same with another conductivity at 20 C, S/m. */
    public Material conducting(double conductivity) {
        return new Material(id, name, conductivity, temperatureCoefficient, muReal, muImag, source, specimen, range);
    }

    /** The same with another permeability {@code mu' - j mu''}. */
    public Material magnetic(double real, double imag) {
        return new Material(id, name, conductivity20, temperatureCoefficient, real, imag, source, specimen);
    }

    /** Conductivity in effect, S/m, in surroundings of a temperature in degrees Celsius. */
    public double conductivity(double celsius) {
        double solid = specimen.sheetFactor() * conductivity20;
        double change = temperatureCoefficient * (specimen.celsius(celsius) - Temperature.TABULATED);
        return temperatureCoefficient < 0 ? solid * (1 - change) : solid / (1 + change);
    }

    /** Complex relative permeability mu' - j mu''. */
    public Complex permeability() {
        return new Complex(muReal, -muImag);
    }

    /** True when the material changes a magnetic field at all. */
    public boolean hasEffect() {
        return conductivity20 > 0 || muReal != 1 || muImag != 0;
    }

    /**
     * Skin depth sqrt(2 / (w mu0 mu' sigma)) in m, infinite for an insulator.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature, degrees Celsius
     */
    public double skinDepth(double omega, double celsius) {
        return Math.sqrt(2 / (omega * MU0 * muReal * conductivity(celsius)));
    }
}
