package eddyreach.model;

import eddyreach.materials.FactorBand;
import java.util.List;
import java.util.Map;

/**
 * What a study file asks for, in SI units.
 *
 * @param id name of its file without the ending
 * @param name readable name
 * @param note free text
 * @param kind which study
 * @param switchModel the switch
 * @param standard the standard target of this switch
 * @param targets the targets, at least one, with different ids
 * @param usualFactors the trade's usual band of the correction factor for those targets that are a material's standard target, by
 *     target id
 * @param firstDistance smallest distance of the curves, m
 * @param lastDistance largest distance of the curves, m, above the first
 * @param points number of distances, at least 2
 * @param accuracy largest numerical error of a distance that is accepted, m
 * @param fieldPictures whether to draw field pictures
 */
public record StudyInput(
        String id,
        String name,
        String note,
        Kind kind,
        SwitchModel switchModel,
        Target standard,
        List<Target> targets,
        Map<String, FactorBand> usualFactors,
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
        usualFactors = Map.copyOf(usualFactors);
    }

    /** The same study without field pictures. */
    public StudyInput withoutFieldPictures() {
        return new StudyInput(
                id,
                name,
                note,
                kind,
                switchModel,
                standard,
                targets,
                usualFactors,
                firstDistance,
                lastDistance,
                points,
                accuracy,
                false);
    }

    /** Numerical error of a distance that is accepted unless a study says otherwise: 0.02 mm at M18, in proportion to the size; m. */
    public static double defaultAccuracy(SwitchModel model) {
        return 0.02e-3 * model.faceDiameter() / 18e-3;
    }

    /** End of the range of distances unless a study says otherwise, m. */
    public static double defaultReach(SwitchModel model) {
        return 2.5 * model.ratedDistance();
    }
}
