package eddyreach.field.targets;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.FrequencyPair;
import eddyreach.field.axial.Layout;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.Solved;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.GapState;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;
import eddyreach.field.orders.AzimuthalOrders;
import eddyreach.geometry.Part;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import java.util.List;

/** A bounded target made of rings, its nearest point in the plane z = 0. */
public final class BodyTarget implements TargetField {

    private final FrequencyPair pair;
    private final AzimuthalOrders orders;

    /**
     * @param parts the target's rings, z from 0 upwards
     * @param basis waves in the gap
     * @param band angular frequencies to cover
     * @param celsius temperature of the target
     * @param resolution how fine
     * @param scale radius of the coil's core, m
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public BodyTarget(
            List<Part> parts, WaveBasis basis, Band band, double celsius, Resolution resolution, double scale) {
        Layout layout = new Layout(parts, null, basis, -1, resolution.target(), scale, band.high(), celsius);
        pair = FrequencyPair.solve(layout, omega -> null, band, celsius, resolution.fields());
        orders = new AzimuthalOrders(layout, omega -> null, band, celsius);
    }

    @Override
    public Reflection at(double omega) {
        double[][] t = pair.response(omega);
        return new Reflection.Full(t[0], t[1]);
    }

    @Override
    public Reflection at(double omega, Reflection served) {
        Reflection.Full full = (Reflection.Full) served;
        pair.response(omega, new double[][] {full.re(), full.im()});
        return full;
    }

    @Override
    public Reflection at(int order, double omega) {
        if (order == 0) {
            return at(omega);
        }
        double[][] t = orders.response(order, omega);
        return new Reflection.Full(t[0], t[1]);
    }

    /** Number of unknowns of the field problem. */
    public int unknowns() {
        return pair.low().unknowns();
    }

    /**
     * Field and losses in and behind the target, in coordinates whose origin is its nearest point.
     *
     * @param omega angular frequency
     * @param state the waves in the gap
     */
    public Solved solve(double omega, GapState state) {
        return pair.solve(omega, state.arrivingRe(), state.arrivingIm(), 0);
    }
}
