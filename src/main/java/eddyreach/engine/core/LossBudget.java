package eddyreach.engine.core;

import eddyreach.geometry.Role;
import java.util.List;

/**
 * Where the loss goes at one distance: series resistances that add to the coil's total resistance.
 *
 * @param distance distance of the target, m; infinite without a target
 * @param shares the parts' shares: winding first, then core, housing, mount, target
 */
public record LossBudget(double distance, List<Share> shares) {

    public LossBudget {
        shares = List.copyOf(shares);
    }

    /**
     * One part's share.
     *
     * @param role what the part is there for
     * @param part the part's name
     * @param withItsEffect true when the share includes what the part changes in the others
     * @param resistance loss resistance, ohm
     */
    public record Share(Role role, String part, boolean withItsEffect, double resistance) {

        /** What is lost in the part itself. */
        public Share(Role role, String part, double resistance) {
            this(role, part, false, resistance);
        }
    }

    /** Sum of all shares, ohm. */
    public double total() {
        return shares.stream().mapToDouble(Share::resistance).sum();
    }

    /** Sum of the shares of the parts of one role, ohm. */
    public double of(Role role) {
        return shares.stream()
                .filter(s -> s.role() == role)
                .mapToDouble(Share::resistance)
                .sum();
    }
}
