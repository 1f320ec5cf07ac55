package eddyreach.surface;

/** A flat triangle with what its integrals need; corners anticlockwise seen from outside the metal. */
final class Panel {

    final double[][] corner;

    /** Unit normal, out of the metal. */
    final double[] normal;

    final double area;

    /** Longest side, m. */
    final double size;

    final double[] centre = new double[3];

    /** Distance from the centre to the farthest corner, m. */
    final double radius;

    /** Unit vectors along the edges; edge e lies opposite corner e. */
    final double[][] along = new double[3][];

    /** Unit normals of the edges in the plane, outwards. */
    final double[][] outward = new double[3][];

    /** Distance of each corner from the edge opposite, m. */
    final double[] altitude = new double[3];

    /** Gradients of the linear shape functions L_i, 1/m. */
    final double[][] gradient = new double[3][];

    /** Their components along the edges' outward normals, {@code [function][edge]}. */
    final double[][] gradAcross = new double[3][3];

    /** Their components along the edges. */
    final double[][] gradAlong = new double[3][3];

    /**
     * Surface curls n x grad Q_j of the quadratic shape functions at the corners, between which they are linear, {@code
     * [function][corner][component]}, 1/m. Functions 0 to 2 belong to the corners, 3 + e to the middle of edge e.
     */
    final double[][][] curl = new double[6][3][];

    Panel(double[] a, double[] b, double[] c) {
        corner = new double[][] {a, b, c};
        double[] n = cross(minus(b, a), minus(c, a));
        double twice = length(n);
        normal = scaled(n, 1 / twice);
        area = twice / 2;
        double longest = 0;
        double far = 0;
        for (int i = 0; i < 3; i++) {
            centre[i] = (a[i] + b[i] + c[i]) / 3;
        }
        for (int e = 0; e < 3; e++) {
            double[] side = minus(corner[(e + 2) % 3], corner[(e + 1) % 3]);
            double l = length(side);
            along[e] = scaled(side, 1 / l);
            outward[e] = cross(along[e], normal);
            altitude[e] = twice / l;
            gradient[e] = scaled(outward[e], -1 / altitude[e]);
            longest = Math.max(longest, l);
            far = Math.max(far, length(minus(corner[e], centre)));
        }
        size = longest;
        radius = far;
        for (int i = 0; i < 3; i++) {
            double[] turn = cross(normal, gradient[i]);
            double[] turnA = cross(normal, gradient[(i + 1) % 3]);
            double[] turnB = cross(normal, gradient[(i + 2) % 3]);
            for (int e = 0; e < 3; e++) {
                gradAcross[i][e] = TrianglePotential.dot(gradient[i], outward[e]);
                gradAlong[i][e] = TrianglePotential.dot(gradient[i], along[e]);
                // Q_i = L_i (2 L_i - 1), Q_(3+i) = 4 L_a L_b
                curl[i][e] = scaled(turn, e == i ? 3 : -1);
                curl[3 + i][e] = scaled(e == i ? normal : e == (i + 1) % 3 ? turnB : turnA, e == i ? 0 : 4);
            }
        }
    }

    /** Integral of grad Q_i . grad Q_j. */
    double stiffness(int i, int j) {
        double sum = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                sum += (a == b ? 2 : 1) * TrianglePotential.dot(curl[i][a], curl[j][b]);
            }
        }
        return sum * area / 12;
    }

    /** Integral of Q_i Q_j. */
    double mean(int i, int j) {
        if (i < 3 && j < 3) {
            return area * (i == j ? 6 : -1) / 180;
        }
        if (i >= 3 && j >= 3) {
            return area * (i == j ? 32 : 16) / 180;
        }
        return Math.abs(i - j) == 3 ? -4 * area / 180 : 0;
    }

    /** Integral of L_i Q_j. */
    double mass(int i, int j) {
        // exact: L_i Q_corner gives area/30 for its own corner and -area/60 for others, L_i Q_middle 2 area/15 or
        // area/15
        if (j < 3) {
            return area * (i == j ? 1.0 / 30 : -1.0 / 60);
        }
        return area * (i == j - 3 ? 1.0 / 15 : 2.0 / 15);
    }

    /** Point with given barycentric coordinates. */
    void point(double[] n, double[] out) {
        for (int c = 0; c < 3; c++) {
            out[c] = n[0] * corner[0][c] + n[1] * corner[1][c] + n[2] * corner[2][c];
        }
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] scaled(double[] a, double s) {
        return new double[] {a[0] * s, a[1] * s, a[2] * s};
    }

    private static double length(double[] a) {
        return Math.sqrt(TrianglePotential.dot(a, a));
    }
}
