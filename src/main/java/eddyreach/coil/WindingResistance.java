package eddyreach.coil;

import eddyreach.materials.Material;
import eddyreach.numerics.Require;

/**
 * Resistance of a winding itself: direct current, skin effect and proximity effect of its round strands.
 *
 * <p>N turns of mean length {@code pi (r0 + r1)}, n strands of diameter d in parallel that share the current
 * equally (ideal litz when n is above 1), conductivity sigma at the winding's temperature:
 *
 * <pre>
 * Rdc   = N pi (r0 + r1) / (n sigma pi d^2/4)
 * Rskin = Rdc F(x)
 * Rprox = 16 pi N pi (r0 + r1) n G(x) / sigma  *  &lt;|H/I|^2&gt;
 * </pre>
 *
 * <p>F, G and x as in {@link RoundConductor}. Each metre of strand dissipates {@code (8 pi/sigma) G |H|^2} in a
 * transverse field of peak value H; the winding is charged {@code R I^2 / 2} for a peak current I, whence the factor 2
 * from 8 to 16. {@code <|H/I|^2>} is the mean square over the window of the field per ampere, weighted by volume
 * ({@code int |H|^2 r dr dz / int r dr dz}): the weight r is the length of strand at that radius, so the product
 * of mean length and mean square is exact.
 *
 * <p>A field solution with the current smeared evenly over the window contains each turn's own field: in its cell
 * of area {@code S/N}, taken as round, the mean square {@code N/(8 pi S)} per ampere squared. For a bundle of n
 * strands that fills its cell this <em>is</em> the internal proximity effect, less the share 1/n which is each
 * strand's own field and is counted by the skin effect; for a plain wire all of it is. So
 * {@link #ownMeanSquareField()} is {@code N/(8 pi S n)}, and {@link #resistance} takes it off. A bundle that fills
 * only a fraction p of its cell sees at most {@code (1/p - 1) N/(8 pi S)} more; this is left out (relative to the
 * whole mean square it is of the order of (1/p - 1)/N for N turns).
 *
 * <p>Left out: the reaction of the strands' eddy currents on the field, the lay of a bundle (strands longer by one
 * or two per cent), leads. Range: non-magnetic strands. References: A. Dowell, Proc. IEE 113 (1966) 1387
 * for the layered case; J. A. Ferreira, IEEE Trans. Power Electronics 9 (1994) 127; J. Lammeraner and M. Stafl,
 * Eddy Currents, 1966; C. R. Sullivan, IEEE Trans. Power Electronics 14 (1999) 283 for litz (all from memory).
 */
public final class WindingResistance {

    /** Densest packing of equal circles, pi/(2 sqrt 3). */
    private static final double DENSEST = Math.PI / (2 * Math.sqrt(3));

    private final Winding winding;

    /**
     * Resistance of the given winding.
     *
     * @throws IllegalArgumentException when a dimension or the conductivity is not positive, the strands are
     * magnetic, or
     *     they do not fit into the window even in the densest packing
     */
    public WindingResistance(Winding winding) {
        Wire wire = winding.wire();
        Material conductor = wire.conductor();
        Require.positive("turns", winding.turns(), "");
        Require.positive("strands", wire.strands(), "");
        Require.positive("copper diameter", wire.copperDiameter(), "m");
        Require.positive("conductivity of " + conductor.name(), conductor.conductivity20(), "S/m");
        if (conductor.muReal() != 1 || conductor.muImag() != 0) {
            throw new IllegalArgumentException("strands of " + conductor.name() + ": must be non-magnetic");
        }
        this.winding = winding;
        if (fillFactor() > DENSEST) {
            throw new IllegalArgumentException("the conductor would fill " + fillFactor() + " of the window: at most "
                    + DENSEST + " is possible with round strands");
        }
    }

    /** Area of the bare conductor over the area of the window. */
    public double fillFactor() {
        return winding.turns()
                * winding.wire().strands()
                * strandArea()
                / winding.section().area();
    }

    /** Length of the wire, m. */
    public double length() {
        return winding.turns()
                * Math.PI
                * (winding.section().r0() + winding.section().r1());
    }

    /**
     * Resistance to direct current, ohm.
     *
     * @param celsius temperature of the winding, degrees Celsius
     */
    public double dcResistance(double celsius) {
        return length() / (winding.wire().strands() * strandArea() * conductivity(celsius));
    }

    /**
     * Resistance with the skin effect, without the proximity effect, ohm.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature of the winding, degrees Celsius
     */
    public double skinResistance(double omega, double celsius) {
        return dcResistance(celsius) * RoundConductor.skinFactor(x(omega, celsius));
    }

    /**
     * Resistance by the proximity effect per mean square of the field at the strands, ohm m2.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature of the winding, degrees Celsius
     */
    public double proximityCoefficient(double omega, double celsius) {
        double g = RoundConductor.proximityFactor(x(omega, celsius));
        return 16 * Math.PI * length() * winding.wire().strands() * g / conductivity(celsius);
    }

    /** Part of the mean square field of the smeared winding which is each strand's own, 1/m2. */
    public double ownMeanSquareField() {
        return winding.turns()
                / (8 * Math.PI * winding.section().area() * winding.wire().strands());
    }

    /**
     * What is left of the winding's resistance, ohm, when a field solution already charges the proximity loss of the whole field
     * in the window, as {@link #muLoss} makes it do: the skin effect less the share of each strand's own field.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature of the winding, degrees Celsius
     */
    public double besideField(double omega, double celsius) {
        return skinResistance(omega, celsius) - proximityCoefficient(omega, celsius) * ownMeanSquareField();
    }

    /**
     * Loss part mu'' of the relative permeability 1 - j mu'' that gives the window the proximity loss of its wires:
     * {@code w mu0 mu'' |H|^2 / 2} per volume equals {@code proximityCoefficient |H|^2 / (2 V)}, V being the volume of the window.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature of the winding, degrees Celsius
     */
    public double muLoss(double omega, double celsius) {
        double volume = Math.PI
                * (winding.section().r0() + winding.section().r1())
                * winding.section().area();
        return proximityCoefficient(omega, celsius) / (omega * Material.MU0 * volume);
    }

    /**
     * The winding's own resistance, ohm.
     *
     * @param omega angular frequency, rad/s
     * @param celsius temperature of the winding, degrees Celsius
     * @param meanSquareField volume mean over the window of |H/I|^2 from the field solution with the current smeared
     *     over the window, 1/m2
     */
    public double resistance(double omega, double celsius, double meanSquareField) {
        Require.notNegative("mean square field", meanSquareField, "1/m2");
        double seen = Math.max(0, meanSquareField - ownMeanSquareField());
        return skinResistance(omega, celsius) + proximityCoefficient(omega, celsius) * seen;
    }

    private double strandArea() {
        double d = winding.wire().copperDiameter();
        return Math.PI * d * d / 4;
    }

    private double conductivity(double celsius) {
        double sigma = winding.wire().conductor().conductivity(celsius);
        return sigma > 0 && sigma < Double.POSITIVE_INFINITY
                ? sigma
                : Require.positive("conductivity at " + celsius + " degC", sigma, "S/m");
    }

    private double x(double omega, double celsius) {
        Require.notNegative("angular frequency", omega, "rad/s");
        return winding.wire().copperDiameter() / 2 * Math.sqrt(omega * Material.MU0 * conductivity(celsius));
    }
}
