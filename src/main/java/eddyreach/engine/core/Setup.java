package eddyreach.engine.core;

import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;

/**
 * What the engine needs to know of a study, whatever its kind.
 *
 * @param switchModel the switch
 * @param standard its standard target, on which it is trimmed
 * @param accuracy largest numerical error of a distance that is accepted, m
 */
public record Setup(SwitchModel switchModel, Target standard, double accuracy) {}
