package eddyreach.engine.core;

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
     * @param group winding, core, housing, mount or target
     * @param part the part's name
     * @param resistance loss resistance, ohm
     */
    public record Share(String group, String part, double resistance) {}

    /** Sum of all shares, ohm. */
    public double total() {
        return shares.stream().mapToDouble(Share::resistance).sum();
    }

    /** Sum of one group's shares, ohm. */
    public double of(String group) {
        return shares.stream()
                .filter(s -> s.group().equals(group))
                .mapToDouble(Share::resistance)
                .sum();
    }
}
