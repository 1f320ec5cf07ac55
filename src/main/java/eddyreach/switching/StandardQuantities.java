package eddyreach.switching;

import eddyreach.numerics.Require;

/**
 * Distances and limits that follow from the rated operating distance s_n, after IEC 60947-5-2.
 *
 * <p>Clause values from memory, except 0.9 s_n to 1.1 s_n (S. Soloman, Sensors and Control Systems in Manufacturing,
 * p. 69): read the edition in force before relying on them.
 *
 * @param ratedDistance rated operating distance s_n, m
 * @param faceDiameter diameter of the active face, m
 */
public record StandardQuantities(double ratedDistance, double faceDiameter) {

    /** Thickness of the standard target, m. */
    public static final double TARGET_THICKNESS = 1e-3;

    /** Largest differential travel H allowed, as a fraction of s_r. */
    public static final double MAX_DIFFERENTIAL_TRAVEL = 0.2;

    /** Largest repeat accuracy R allowed, as a fraction of s_r. */
    public static final double MAX_REPEAT_ACCURACY = 0.1;

    /** Band of s_r about s_n, and of s_u about s_r. */
    private static final double BAND = 0.1;

    public StandardQuantities {
        Require.positive("rated operating distance", ratedDistance, "m");
        Require.positive("face diameter", faceDiameter, "m");
    }

    /** Smallest effective operating distance allowed, 0.9 s_n, m. */
    public double minEffective() {
        return (1 - BAND) * ratedDistance;
    }

    /** Largest effective operating distance allowed, 1.1 s_n, m. */
    public double maxEffective() {
        return (1 + BAND) * ratedDistance;
    }

    /** Smallest usable operating distance over temperature and supply, 0.9 s_r, m. */
    public static double minUsable(double effective) {
        return (1 - BAND) * Require.positive("effective operating distance", effective, "m");
    }

    /** Largest usable operating distance over temperature and supply, 1.1 s_r, m. */
    public static double maxUsable(double effective) {
        return (1 + BAND) * Require.positive("effective operating distance", effective, "m");
    }

    /** Assured operating distance s_a: every such switch is on from 0 to 0.9 x 0.9 s_n = 0.81 s_n, m. */
    public double assured() {
        return minUsable(minEffective());
    }

    /**
     * Distance beyond which every such switch is off, m: the largest usable distance 1.21 s_n and a differential
     * travel of 0.2 x 1.1 s_n, together 1.43 s_n.
     */
    public double sureRelease() {
        return maxUsable(maxEffective()) + MAX_DIFFERENTIAL_TRAVEL * maxEffective();
    }

    /** Side of the square standard target of Fe 360, 1 mm thick: the larger of the face diameter and 3 s_n, m. */
    public double targetSide() {
        return Math.max(faceDiameter, 3 * ratedDistance);
    }
}
