package eddyreach.linalg;

/** The values of a complex symmetric matrix given as a sum of small dense matrices. */
public interface ElementMatrices {

    /**
     * Writes the lower triangle of one element's matrix, entry (i, j) at {@code [i * (i + 1) / 2 + j]}.
     *
     * @param element index of the element, in the order of the plan's unknown lists
     * @param re real parts, to be overwritten
     * @param im imaginary parts, to be overwritten
     */
    void fill(int element, double[] re, double[] im);
}
