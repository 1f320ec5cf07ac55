package eddyreach.model;

import java.util.List;

/**
 * A study of the kind {@code zone}: where, off the axis and away from the face, targets switch the output.
 *
 * @param header what every study says
 * @param targets the targets, at least one, with different ids
 * @param offsets sideways offsets
 * @param lastDistance largest distance examined, m
 */
public record ZoneInput(StudyHeader header, List<Target> targets, Offsets offsets, double lastDistance)
        implements StudyInput {

    public ZoneInput {
        targets = List.copyOf(targets);
    }
}
