package eddyreach.model;

/**
 * What every study says, whatever its kind.
 *
 * @param id name of its file without the ending
 * @param name readable name
 * @param note free text
 * @param kind which study
 * @param switchModel the switch
 * @param standard the standard target of this switch
 * @param accuracy largest numerical error of a distance that is accepted, m
 */
public record StudyHeader(
        String id,
        String name,
        String note,
        StudyInput.Kind kind,
        SwitchModel switchModel,
        Target standard,
        double accuracy) {}
