package eddyreach.closedform;

/**
 * An air coil of rectangular section with evenly spread current.
 *
 * @param innerRadius inner radius r1, m, not negative
 * @param outerRadius outer radius r2, m, above the inner one
 * @param length axial length, m; 0 makes a flat disc coil
 * @param turns number of turns N
 */
public record RectangularCoil(double innerRadius, double outerRadius, double length, double turns) {

    /** Refuses sizes that make no coil. */
    public RectangularCoil {
        Args.notNegative("inner radius, m", innerRadius);
        Args.positive("outer radius less inner radius, m", outerRadius - innerRadius);
        Args.notNegative("length, m", length);
        Args.positive("turns", turns);
    }
}
