package eddyreach.field.join;

/**
 * How a target at one frequency sends incoming waves back, with the target's nearest point in the plane z = 0 and square roots of
 * the quadrature weights on both sides.
 */
public sealed interface Reflection {

    /**
     * An endless layered plate: each wave comes back by itself.
     *
     * @param re real part of the reflection coefficient of each wave
     * @param im imaginary part
     */
    record Diagonal(double[] re, double[] im) implements Reflection {}

    /**
     * A bounded body: a symmetric matrix, row by row.
     *
     * @param re real part
     * @param im imaginary part
     */
    record Full(double[] re, double[] im) implements Reflection {}
}
