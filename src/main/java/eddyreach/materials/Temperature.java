package eddyreach.materials;

/** Temperatures that are stated once. The program computes with degrees Celsius throughout; only differences of them enter. */
public final class Temperature {

    /** Ambient temperature of trim and test, degrees Celsius (IEC 60947-5-2: 23 +- 5). */
    public static final double AMBIENT = 23;

    /** Temperature at which conductivities are tabulated, degrees Celsius. */
    public static final double TABULATED = 20;

    private Temperature() {}
}
