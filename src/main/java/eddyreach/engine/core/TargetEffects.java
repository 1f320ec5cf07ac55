package eddyreach.engine.core;

import eddyreach.field.axial.Band;
import eddyreach.field.join.GapState;
import eddyreach.field.join.Join;
import eddyreach.field.join.OffAxisResponse;
import eddyreach.field.join.OffAxisTarget;
import eddyreach.field.join.PlacedTarget;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.SwitchField;
import eddyreach.field.join.TargetField;
import org.apache.commons.math3.complex.Complex;

/**
 * What targets do to the coil of a switch, on its axis and beside it.
 *
 * @param field the switch's side of the gap
 * @param band angular frequencies that it covers
 * @param plane height above the face of the plane in which switch and target are joined, m; distances count from the face
 * @param tolerance share of the change of impedance that azimuthal orders left out may have
 */
record TargetEffects(SwitchField field, Band band, double plane, double tolerance) {

    /**
     * What a target does, with tables that serve all distances; for one thread.
     *
     * @param nearest distance below which azimuthal orders that matter there alone are left out, m
     */
    TargetEffect of(PlacedTarget target, double nearest) {
        if (target instanceof OffAxisTarget beside) {
            return interpolated(response(beside, nearest, band.low()), response(beside, nearest, band.high()));
        }
        TargetField axial = (TargetField) target;
        Join join = field.at(band.low());
        Reflection reflection = axial.at(band.low());
        return (omega, distance) -> field.at(omega, join).impedance(axial.at(omega, reflection), distance - plane);
    }

    /** Change of the impedance by a target at a distance, m, and an angular frequency, ohm. */
    Complex change(PlacedTarget target, double omega, double distance) {
        return target instanceof OffAxisTarget beside
                ? response(beside, 0, omega).impedance(distance - plane)
                : axial((TargetField) target, omega, distance);
    }

    /** The waves in the gap before a target on the axis. */
    GapState gap(TargetField target, double omega, double distance) {
        return field.at(omega).solve(target.at(omega), distance - plane);
    }

    private Complex axial(TargetField target, double omega, double distance) {
        return field.at(omega).impedance(target.at(omega), distance - plane);
    }

    private OffAxisResponse response(OffAxisTarget target, double nearest, double omega) {
        return field.beside(omega, tolerance).at(target.about(), target.offset(), Math.max(0, nearest - plane));
    }

    /** The operators are shifted at both ends of the band, and the change over w is linear in between. */
    private TargetEffect interpolated(OffAxisResponse low, OffAxisResponse high) {
        return new TargetEffect() {
            @Override
            public Complex change(double omega, double distance) {
                double t = (omega - band.low()) / (band.high() - band.low());
                return low.impedance(distance - plane)
                        .multiply((1 - t) * omega / band.low())
                        .add(high.impedance(distance - plane).multiply(t * omega / band.high()));
            }

            @Override
            public double truncation(double distance) {
                return Math.max(low.truncation(distance - plane), high.truncation(distance - plane));
            }
        };
    }
}
