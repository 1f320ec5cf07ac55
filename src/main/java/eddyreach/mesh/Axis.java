package eddyreach.mesh;

import java.util.Arrays;

/**
 * One coordinate axis cut into elements, each with its own polynomial degree; continuous piecewise polynomials on it.
 *
 * <p>Functions are numbered along the axis: the vertex at the left end of an element, then the element's inner functions of
 * degree 2, 3, ..., then the next vertex. A tensor product of two such axes is a conforming space whatever the degrees, so small
 * elements at corners may have a low degree and large ones a high one.
 */
public final class Axis {

    private final double[] ends;
    private final int[] degree;
    private final int[] first;

    /**
     * @param ends ends of the elements, m, ascending
     * @param degree polynomial degree of each element, at least 1
     */
    public Axis(double[] ends, int[] degree) {
        if (ends.length != degree.length + 1 || degree.length == 0) {
            throw new IllegalArgumentException(ends.length + " ends for " + degree.length + " elements");
        }
        this.ends = ends.clone();
        this.degree = degree.clone();
        first = new int[ends.length];
        for (int e = 0; e < degree.length; e++) {
            if (!(ends[e + 1] > ends[e]) || degree[e] < 1) {
                throw new IllegalArgumentException(
                        "element " + e + " from " + ends[e] + " to " + ends[e + 1] + ", degree " + degree[e]);
            }
            first[e + 1] = first[e] + degree[e];
        }
    }

    /** Number of elements. */
    public int elements() {
        return degree.length;
    }

    /** Lower end of element e, or the upper end of the last one for e = elements(); m. */
    public double end(int e) {
        return ends[e];
    }

    /** Length of element e, m. */
    public double length(int e) {
        return ends[e + 1] - ends[e];
    }

    /** Middle of element e, m. */
    public double middle(int e) {
        return (ends[e] + ends[e + 1]) / 2;
    }

    /** Polynomial degree of element e. */
    public int degree(int e) {
        return degree[e];
    }

    /** Number of functions on the axis. */
    public int functions() {
        return first[degree.length] + 1;
    }

    /** Number of the vertex function at the lower end of element e (e = elements() gives the last vertex). */
    public int vertex(int e) {
        return first[e];
    }

    /**
     * Number of a local function: 0 the lower vertex, 1 the upper vertex, k the inner function of degree k.
     *
     * @param e element
     * @param local local function, 0 to degree(e)
     */
    public int function(int e, int local) {
        return local == 0 ? first[e] : local == 1 ? first[e + 1] : first[e] + local - 1;
    }

    /** The element that contains x (the lower one at an inner vertex), or -1 outside. */
    public int find(double x) {
        if (!(x >= ends[0] && x <= ends[degree.length])) {
            return -1;
        }
        int i = Arrays.binarySearch(ends, x);
        return Math.max(0, (i < 0 ? -i - 2 : i - 1));
    }
}
