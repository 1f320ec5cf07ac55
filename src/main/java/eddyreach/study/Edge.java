package eddyreach.study;

/**
 * How far beside the axis a target is seen at a distance.
 *
 * @param offset offset of its axis, m; NaN if it is never seen or beyond the range of offsets
 * @param error numerical error bar, m
 */
public record Edge(double offset, double error) {

    static final Edge NONE = new Edge(Double.NaN, Double.NaN);

    /** True when there is one within the range of offsets. */
    public boolean found() {
        return Double.isFinite(offset);
    }

    /** With a bar that also holds a shift of the offset, m. */
    Edge wider(double shift) {
        return new Edge(offset, error + shift);
    }
}
