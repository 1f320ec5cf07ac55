package eddyreach.closedform;

/** Static limits of small bodies in a uniform field, for checks. */
public final class SmallBodies {

    private static final double NEAR_SPHERE = 1e-3;

    /** The series falls as n^-5. */
    private static final int TERMS = 60;

    private SmallBodies() {}

    /**
     * Dipole moment of a thin perfectly conducting disc across the field, A m2: m = -(8/3) a^3 H0 (Landau and Lifshitz,
     * Electrodynamics of Continuous Media, superconducting disc).
     *
     * @param radius radius a, m
     * @param field applied axial field H0, A/m
     */
    public static double perfectDiscMoment(double radius, double field) {
        return -8.0 / 3 * radius * radius * radius * field;
    }

    /**
     * Loss of a thin weakly conducting rectangle in a uniform alternating field across it, over that of a disc of equal area: the
     * currents obey the equation of St Venant's torsion, so this is the ratio of torsion constants (Timoshenko and Goodier, Theory of
     * Elasticity, 1970, art. 109): {@code J = a b^3/3 [1 - 192 b/(pi^5 a) sum tanh(n pi a/(2b)) / n^5]} over odd n, a the longer side,
     * against (a b)^2 / (2 pi). 0.883 for a square.
     *
     * @param aspect longer over shorter side, at least 1
     */
    public static double rectangleLossRatio(double aspect) {
        double a = Args.positive("aspect", aspect);
        double sum = 0;
        for (int n = 1; n < TERMS; n += 2) {
            sum += Math.tanh(n * Math.PI * a / 2) / Math.pow(n, 5);
        }
        double torsion = a / 3 * (1 - 192 / (Math.pow(Math.PI, 5) * a) * sum);
        return torsion * 2 * Math.PI / (a * a);
    }

    /**
     * Demagnetising factor along the axis of an ellipsoid of revolution (Osborn, Phys. Rev. 67, 1945, 351); 1/3 for the sphere.
     *
     * @param lengthOverDiameter axis of revolution over the other axis, above 0
     */
    public static double ellipsoidDemagnetising(double lengthOverDiameter) {
        double m = Args.positive("length over diameter", lengthOverDiameter);
        double e2 = (m - 1) * (m + 1);
        if (Math.abs(e2) < NEAR_SPHERE) {
            // both closed forms cancel here; this is their common Taylor series
            return 1.0 / 3 + e2 * (-2.0 / 15 + e2 * (8.0 / 105 - e2 * 16 / 315));
        }
        double root = Math.sqrt(Math.abs(e2));
        double arc = e2 > 0 ? Math.log1p(root + e2 / (1 + m)) : Math.atan2(root, m);
        return (m / root * arc - 1) / e2;
    }
}
