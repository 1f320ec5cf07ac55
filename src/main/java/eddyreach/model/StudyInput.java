package eddyreach.model;

import java.util.List;

/**
 * What a study file asks for, in SI units.
 *
 * @param id name of its file without the ending
 * @param name readable name
 * @param note free text
 * @param kind which study
 * @param switchModel the switch
 * @param targets the targets, at least one, with different ids
 * @param firstDistance smallest distance of the curves, m
 * @param lastDistance largest distance of the curves, m, above the first
 * @param points number of distances, at least 2
 * @param accuracy largest numerical error of a distance that is accepted, m; 0 when the file leaves it open
 * @param fieldPictures whether to draw field pictures
 */
public record StudyInput(
        String id,
        String name,
        String note,
        Kind kind,
        SwitchModel switchModel,
        List<Target> targets,
        double firstDistance,
        double lastDistance,
        int points,
        double accuracy,
        boolean fieldPictures) {

    /** The kinds of study. */
    public enum Kind {
        APPROACH("approach"),
        MATERIALS("materials");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** The word used in files and tables. */
        public String label() {
            return label;
        }
    }

    public StudyInput {
        targets = List.copyOf(targets);
    }
}
