package eddyreach.engine.core;

import eddyreach.field.join.OffAxisTarget;
import eddyreach.field.join.PlacedTarget;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** What the studies off the axis share. */
public final class OffAxisLimits {

    private OffAxisLimits() {}

    /** The targets at the largest offset, m, with the standard target, on which the switch is trimmed, in front; m. */
    public static List<Target> withStandard(Target standard, List<Target> targets, double farthest, double core) {
        List<Target> all = new ArrayList<>();
        all.add(standard);
        targets.forEach(t -> all.add(at(t, farthest, core)));
        return all;
    }

    /** A target at an offset, or at the largest at which it is noticed, m. */
    public static Target at(Target target, double offset, double core) {
        return target.beside(Math.min(offset, OffsetLimit.farthest(target, core)));
    }

    /**
     * How far the real edge of a target that is computed as a disc lies from the disc's, m; 0 for round ones. Offsets carry about that much: an
     * independent three-dimensional solution of a square of 18 mm has 3 % less loss than the disc at an offset of 6 mm and 19 % at 10 mm,
     * both less than a shift by this amount makes.
     */
    public static double outlineShift(Target target) {
        return target.sheet()
                .map(sheet -> {
                    if (sheet.outline() instanceof Target.Outline.Square square) {
                        return target.radius() - square.side() / 2;
                    }
                    if (sheet.outline() instanceof Target.Outline.Rectangle r) {
                        return Math.max(
                                Math.max(r.width(), r.height()) / 2 - target.radius(),
                                target.radius() - Math.min(r.width(), r.height()) / 2);
                    }
                    return 0.0;
                })
                .orElse(0.0);
    }

    /**
     * What the real outline of a target that is computed as a disc may change of the conductance beside the axis, S; 0 on it.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static double outline(
            SolvedSwitch solved, Target target, PlacedTarget field, TankState here, double distance) {
        double shift = outlineShift(target);
        if (!(field instanceof OffAxisTarget b) || shift == 0) {
            return 0;
        }
        double most = 0;
        for (double offset : new double[] {Math.abs(b.offset() - shift), b.offset() + shift}) {
            TankState there = solved.state(new OffAxisTarget(b.about(), offset), distance);
            most = Math.max(most, Math.abs(there.conductance() - here.conductance()));
        }
        return most;
    }

    /** Says what a disc in place of the outline means beside the axis. */
    public static Optional<Warning> outline(Target target) {
        double shift = outlineShift(target);
        if (shift == 0) {
            return Optional.empty();
        }
        return Optional.of(
                Warning.of(Warning.Kind.OUTLINE_BESIDE_AXIS, target.id()).with(Warning.Measure.SHIFT, shift));
    }

    /** The limits of validity that a target touches. */
    public static List<Warning> warnings(
            Target target, double farthest, double error, double accuracy, SolvedSwitch solved) {
        List<Warning> list = new ArrayList<>();
        for (Material m : new LinkedHashSet<>(target.body().materials())) {
            ValidityLimits.permeability(target.id(), m).ifPresent(list::add);
        }
        outline(target).ifPresent(list::add);
        if (solved.fields().endless(target.beside(farthest))) {
            list.add(Warning.of(Warning.Kind.OFFSET_WITHOUT_EFFECT, target.id())
                    .with(Warning.Measure.RADIUS, target.radius()));
        }
        if (error > accuracy) {
            list.add(ValidityLimits.error(target.id(), error, accuracy));
        }
        return list;
    }
}
