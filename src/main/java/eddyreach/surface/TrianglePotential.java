package eddyreach.surface;

/**
 * Exact integrals over a flat triangle of polynomial densities, at any point, without the factor 1/(4 pi).
 *
 * <p>With the point's signed height h over the plane and its foot there, s from the foot to the source, for each edge e its outward normal m_e
 * in the plane, its direction d_e, the distance t_e of its line from the foot along m_e and {@code f_e = int_e dl/R}:
 *
 * <pre>
 *   int 1/R      = sum t_e f_e - h w                                      w: solid angle with the sign of h
 *   int s/R      = sum m_e int_e R dl
 *   int h/R^3    = w
 *   int s/R^3    = -sum m_e f_e
 *   int s s/R^3  = (int 1/R) 1 - sum (t_e f_e m_e m_e + [R]_e d_e m_e)
 * </pre>
 *
 * (Wilton and others, IEEE Trans. Antennas Propag. 32 (1984) 276; Graglia, 41 (1993) 1448; the solid angle by van Oosterom and
 * Strackee, IEEE Trans. Biomed. Eng. 30 (1983) 125). In the plane itself a double layer has its principal value, zero.
 *
 * <p>One instance holds scratch space and serves one thread.
 */
final class TrianglePotential {

    /** Heights below this share of the triangle's size count as none. */
    private static final double FLAT = 1e-10;

    private final double[] f = new double[3];
    private final double[] t = new double[3];
    private final double[] step = new double[3];
    private final double[][] r = new double[3][3];
    private final double[] distance = new double[3];

    /** The linear shape functions at the foot. */
    private final double[] foot = new double[3];

    /** grad L_i . int s/R^3. */
    private final double[] slope = new double[3];

    private final double[] acrossDirection = new double[3];
    private final double[] alongDirection = new double[3];

    /** The integrals of L_i/R. */
    final double[] single = new double[3];

    /** Their derivatives in the direction given. */
    final double[] derivative = new double[3];

    /** The double layers int Q_j n.(x - y)/R^3 of the six quadratic shape functions. */
    final double[] layer = new double[6];

    /**
     * Evaluates all of them at a point.
     *
     * @param p the triangle
     * @param x coordinates of the point, m
     * @param direction unit vector along which the derivatives are taken
     */
    void at(Panel p, double[] x, double[] direction) {
        for (int i = 0; i < 3; i++) {
            double[] v = p.corner[i];
            r[i][0] = v[0] - x[0];
            r[i][1] = v[1] - x[1];
            r[i][2] = v[2] - x[2];
            distance[i] = Math.sqrt(dot(r[i], r[i]));
        }
        double h = -dot(p.normal, r[0]);
        if (Math.abs(h) < FLAT * p.size) {
            h = 0;
        }
        double angle = h == 0 ? 0 : solidAngle();
        double whole = edges(p, h, angle);
        for (int i = 0; i < 3; i++) {
            // L_i at the foot is its distance from the edge opposite over the height of the triangle
            foot[i] = t[i] / p.altitude[i];
            slope[i] = 0;
            for (int e = 0; e < 3; e++) {
                slope[i] -= p.gradAcross[i][e] * f[e];
            }
        }
        linear(p, h, angle, whole, direction);
        quadratic(p, h, angle, whole);
    }

    /** Fills what belongs to the edges, and returns the integral of 1/R. */
    private double edges(Panel p, double h, double angle) {
        double whole = -h * angle;
        for (int i = 0; i < 3; i++) {
            single[i] = 0;
        }
        for (int e = 0; e < 3; e++) {
            // edge e lies opposite corner e
            int a = (e + 1) % 3;
            int b = (e + 2) % 3;
            t[e] = dot(p.outward[e], r[a]);
            double la = dot(p.along[e], r[a]);
            double lb = dot(p.along[e], r[b]);
            double off = t[e] * t[e] + h * h;
            f[e] = alongEdge(p, la, lb, distance[a], distance[b], off);
            step[e] = distance[b] - distance[a];
            whole += t[e] * f[e];
            double lengths = (off * f[e] + lb * distance[b] - la * distance[a]) / 2;
            for (int i = 0; i < 3; i++) {
                single[i] += p.gradAcross[i][e] * lengths;
            }
        }
        return whole;
    }

    /** The integral of 1/R along an edge; finite on the edge's own line, where its factor vanishes. */
    private static double alongEdge(Panel p, double la, double lb, double ra, double rb, double off) {
        if (off < FLAT * FLAT * p.size * p.size) {
            return la * lb > 0 ? Math.abs(Math.log(lb / la)) : 0;
        }
        // the form without cancellation
        return la + lb < 0 ? Math.log((ra - la) / (rb - lb)) : Math.log((rb + lb) / (ra + la));
    }

    private void linear(Panel p, double h, double angle, double whole, double[] direction) {
        double above = dot(direction, p.normal);
        double flow = 0;
        for (int e = 0; e < 3; e++) {
            acrossDirection[e] = dot(direction, p.outward[e]);
            alongDirection[e] = dot(direction, p.along[e]);
            flow -= acrossDirection[e] * f[e];
        }
        for (int i = 0; i < 3; i++) {
            single[i] += foot[i] * whole;
            double second = whole * dot(direction, p.gradient[i]);
            for (int e = 0; e < 3; e++) {
                double across = p.gradAcross[i][e];
                second -= t[e] * f[e] * acrossDirection[e] * across
                        + step[e] * (alongDirection[e] * across + acrossDirection[e] * p.gradAlong[i][e]) / 2;
            }
            derivative[i] = -above * (foot[i] * angle + h * slope[i]) + foot[i] * flow + second;
        }
    }

    private void quadratic(Panel p, double h, double angle, double whole) {
        for (int i = 0; i < 3; i++) {
            double u = foot[i];
            layer[i] = u * (2 * u - 1) * angle + h * ((4 * u - 1) * slope[i] + 2 * curvature(p, i, i, whole));
            int a = (i + 1) % 3;
            int b = (i + 2) % 3;
            layer[3 + i] = 4
                    * (foot[a] * foot[b] * angle
                            + h * (foot[a] * slope[b] + foot[b] * slope[a] + curvature(p, a, b, whole)));
        }
    }

    /** grad L_i . (int s s/R^3) . grad L_j. */
    private double curvature(Panel p, int i, int j, double whole) {
        double sum = whole * dot(p.gradient[i], p.gradient[j]);
        double[] acrossI = p.gradAcross[i];
        double[] acrossJ = p.gradAcross[j];
        for (int e = 0; e < 3; e++) {
            sum -= t[e] * f[e] * acrossI[e] * acrossJ[e]
                    + step[e] * (p.gradAlong[i][e] * acrossJ[e] + acrossI[e] * p.gradAlong[j][e]) / 2;
        }
        return sum;
    }

    /** Solid angle of the triangle, positive on the side of the normal. */
    private double solidAngle() {
        double[] p = r[0];
        double[] q = r[1];
        double[] s = r[2];
        double triple = p[0] * (q[1] * s[2] - q[2] * s[1])
                + p[1] * (q[2] * s[0] - q[0] * s[2])
                + p[2] * (q[0] * s[1] - q[1] * s[0]);
        double below = distance[0] * distance[1] * distance[2]
                + dot(p, q) * distance[2]
                + dot(q, s) * distance[0]
                + dot(s, p) * distance[1];
        return -2 * Math.atan2(triple, below);
    }

    static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
