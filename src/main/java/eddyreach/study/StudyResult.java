package eddyreach.study;

import eddyreach.model.StudyInput;
import eddyreach.model.SwitchModel;
import java.util.List;

/**
 * The complete, immutable result of a study: everything that tables, charts and pages need.
 *
 * @param id name of the study file without its ending
 * @param name readable name
 * @param note what the study is about, as its file says
 * @param kind which question was asked
 * @param model the switch
 * @param capacitance tank capacitance, F
 * @param undamped the tank without a target: resistance, inductance, frequency, conductance, amplitude
 * @param onConductance tank conductance above which the output switches on, S
 * @param offConductance tank conductance below which it switches off, S
 * @param onAmplitude amplitude at the on threshold, V
 * @param offAmplitude amplitude at the off threshold, V
 * @param freeBudget losses without a target
 * @param targets one result per target, the standard target first
 * @param fields field pictures, the one without a target first
 * @param currents eddy currents in the targets
 * @param warnings limits that concern the whole study
 */
public record StudyResult(
        String id,
        String name,
        String note,
        StudyInput.Kind kind,
        SwitchModel model,
        double capacitance,
        Operating undamped,
        double onConductance,
        double offConductance,
        double onAmplitude,
        double offAmplitude,
        LossBudget freeBudget,
        List<TargetResult> targets,
        List<FieldPicture> fields,
        List<CurrentPicture> currents,
        List<Warning> warnings) {

    public StudyResult {
        targets = List.copyOf(targets);
        fields = List.copyOf(fields);
        currents = List.copyOf(currents);
        warnings = List.copyOf(warnings);
    }

    /**
     * The tank in one state.
     *
     * @param resistance series resistance, ohm
     * @param inductance inductance, H
     * @param frequency frequency of the oscillation, Hz
     * @param conductance loss conductance at resonance, S
     * @param amplitude amplitude, V peak
     */
    public record Operating(
            double resistance, double inductance, double frequency, double conductance, double amplitude) {

        /** Quality of the tank, w L / R. */
        public double quality() {
            return 2 * Math.PI * frequency * inductance / resistance;
        }
    }
}
