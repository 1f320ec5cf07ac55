package eddyreach.kinds.offaxis;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.model.values.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Where one target switches, over offset and distance.
 *
 * @param target the target
 * @param offset sideways offsets from 0, m
 * @param distances where it switches on the way in and out at each offset
 * @param distance distances of the map below, m
 * @param conductance conductance of the tank at each offset and distance, S
 * @param onEdge how far beside the axis it is recognised in contact with the face's plane
 * @param offEdge how far it is still held there
 * @param warnings limits of validity that are touched
 */
public record ZoneTarget(
        Target target,
        double[] offset,
        List<SwitchDistance> distances,
        double[] distance,
        double[][] conductance,
        ZoneEdge onEdge,
        ZoneEdge offEdge,
        List<Warning> warnings) {

    public ZoneTarget {
        distances = List.copyOf(distances);
        warnings = List.copyOf(warnings);
    }

    ZoneTarget with(List<Warning> limits) {
        return new ZoneTarget(target, offset, distances, distance, conductance, onEdge, offEdge, limits);
    }

    /**
     * Bars that also hold what a shift of the offset, m, would change: a target whose outline is not round is computed as a disc.
     */
    ZoneTarget withOutline(double shift) {
        if (shift == 0) {
            return this;
        }
        List<SwitchDistance> wider = new ArrayList<>();
        for (int i = 0; i < offset.length; i++) {
            SwitchDistance d = distances.get(i);
            wider.add(new SwitchDistance(
                    d.outcome(),
                    d.on(),
                    d.off(),
                    d.onError() + change(i, shift, SwitchDistance::on),
                    d.offError() + change(i, shift, SwitchDistance::off)));
        }
        return new ZoneTarget(
                target, offset, wider, distance, conductance, onEdge.wider(shift), offEdge.wider(shift), warnings);
    }

    /** Largest change of a distance within a shift of the offset; where the target is never seen within it, the whole distance. */
    private double change(int i, double shift, ToDoubleFunction<SwitchDistance> value) {
        double here = value.applyAsDouble(distances.get(i));
        double most = 0;
        double step = offset[1] - offset[0];
        for (int side = -1; side <= 1; side += 2) {
            double at = Math.min(offset.length - 1, Math.abs(i + side * shift / step));
            int j = Math.min(offset.length - 2, (int) at);
            double low = orContact(value.applyAsDouble(distances.get(j)));
            double high = orContact(value.applyAsDouble(distances.get(j + 1)));
            most = Math.max(most, Math.abs(low + (at - j) * (high - low) - here));
        }
        return most;
    }

    private static double orContact(double distance) {
        return Double.isFinite(distance) ? distance : 0;
    }

    /** The largest error bar of its distances, m; NaN if it never switches. */
    public double error() {
        return distances.stream()
                .mapToDouble(SwitchDistance::error)
                .filter(Double::isFinite)
                .max()
                .orElse(Double.NaN);
    }
}
