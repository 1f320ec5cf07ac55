package eddyreach.engine.assure;

import eddyreach.engine.core.SwitchDistance.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * Why a target switches where it does, as computed facts; the words are in {@code report.words}.
 *
 * @param outcome what the output does
 * @param factor the correction factor, NaN when it never switches on
 * @param offset distance of the target's axis from that of the switch, m; 0 where that does not matter
 * @param cause what decides
 */
public record Reason(Outcome outcome, double factor, double offset, Cause cause) {

    /** What decides. */
    public sealed interface Cause {}

    /** It neither conducts nor is magnetic. */
    public record NoEffect() implements Cause {}

    /**
     * It lies wholly beside the active face.
     *
     * @param clearance from the rim of the face to its nearest edge, m
     */
    public record BesideFace(double clearance) implements Cause {}

    /** The standard target. */
    public record Standard(double skinDepth) implements Cause {}

    /** Magnetic without conducting: it draws the field. */
    public record Draws() implements Cause {}

    /**
     * A sheet thinner than its skin depth.
     *
     * @param thickness its thickness, m
     * @param skinDepth its skin depth, m
     * @param best thickness at which such a sheet damps the tank most at this distance, m
     * @param share its damping over that of the best thickness
     */
    public record Resistor(double thickness, double skinDepth, double best, double share) implements Cause {}

    /**
     * A single layer that is not thin against its skin depth.
     *
     * @param metal what it is made of
     * @param thickness its thickness, m
     */
    public record Thick(Metal metal, double thickness) implements Cause {}

    /**
     * A ball.
     *
     * @param diameter its diameter, m
     * @param metal what it is made of
     */
    public record Ball(double diameter, Metal metal) implements Cause {}

    /**
     * A body of rings.
     *
     * @param slit whether no current can run round it
     * @param hollow whether it is open in the middle
     * @param plating a thin metal in front that lets the field through
     * @param base the metal that counts
     * @param thinnest its thickness where it is thinnest, m
     * @param shares which material takes which share of its loss; empty when one takes all
     */
    public record Rings(
            boolean slit, boolean hollow, Optional<Coat> plating, Metal base, double thinnest, List<LossShare> shares)
            implements Cause {}

    /**
     * Several layers.
     *
     * @param spacing thickness of what has no effect in front of the first metal, m
     * @param front the first layer with an effect
     * @param shares which material takes which share of the loss; empty when one takes all
     */
    public record Layers(double spacing, Coat front, List<LossShare> shares) implements Cause {}

    /**
     * A metal in the field.
     *
     * @param name its name
     * @param magnetic whether it is magnetic
     * @param skinDepth its skin depth, m
     * @param share its loss over that of the best thick metal
     */
    public record Metal(String name, boolean magnetic, double skinDepth, double share) {}

    /**
     * A layer in front of others.
     *
     * @param material its name
     * @param thickness its thickness, m
     * @param skinDepth its skin depth, m; infinite if it does not conduct
     */
    public record Coat(String material, double thickness, double skinDepth) {

        /** True when it hides what lies behind it. */
        public boolean hides() {
            return thickness > Regime.THICK * skinDepth;
        }

        /** True when it lets the field through. */
        public boolean thin() {
            return thickness < Regime.THIN * skinDepth;
        }
    }

    /** The share of the target's loss that a material takes. */
    public record LossShare(String material, double share) {}

    /** True when a thickness is enough for a skin to form. */
    public static boolean thick(double thickness, double skinDepth) {
        return thickness > Regime.THICK * skinDepth;
    }
}
