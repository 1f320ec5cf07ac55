package eddyreach.kinds.mount;

/**
 * What the trade does, beside what was computed.
 *
 * @param mount id of the mount
 * @param rule the rule, common practice, with its numbers for this switch
 * @param kept whether the mount keeps to it
 * @param comparison what the computed numbers say about the rule here
 */
public record UsualRule(String mount, String rule, boolean kept, String comparison) {}
