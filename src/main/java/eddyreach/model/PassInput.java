package eddyreach.model;

import java.util.List;

/**
 * A study of the kind {@code pass}: targets that slide past the face at one distance.
 *
 * @param header what every study says
 * @param targets the targets, at least one, with different ids
 * @param distance distance at which they pass, m
 * @param offsets sideways offsets of one half of the way
 */
public record PassInput(StudyHeader header, List<Target> targets, double distance, Offsets offsets)
        implements StudyInput {

    public PassInput {
        targets = List.copyOf(targets);
    }
}
