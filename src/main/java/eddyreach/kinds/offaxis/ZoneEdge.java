package eddyreach.kinds.offaxis;

/**
 * How far beside the axis a target is seen at a distance.
 *
 * @param offset offset of its axis, m; NaN if it is never seen or beyond the range of offsets
 * @param error numerical error bar, m
 */
public record ZoneEdge(double offset, double error) {

    static final ZoneEdge NONE = new ZoneEdge(Double.NaN, Double.NaN);

    /** True when there is one within the range of offsets. */
    public boolean found() {
        return Double.isFinite(offset);
    }

    /** With a bar that also holds a shift of the offset, m. */
    ZoneEdge wider(double shift) {
        return new ZoneEdge(offset, error + shift);
    }
}
