package eddyreach.kinds.series;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.assure.Variants;
import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.Trim;
import java.util.Arrays;
import java.util.List;

/**
 * Computes single pieces of a series directly: the switch with its deviations and the target with its own. Deviations stand in an array by the number of their
 * {@link Factor}, SI; an array of zeros is the nominal piece at the middle of the temperatures.
 *
 * @param study the study
 * @param step the nominal switch
 */
record Pieces(SeriesInput study, ResolutionLadder.Step step) {

    /** The target before the switch at the temperature of the unit. */
    ConductanceCurve target(double[] deviation) {
        Tolerances t = study.tolerances();
        boolean warm = t.limit(Factor.TEMPERATURE) > 0;
        double celsius = warm ? t.middle() + deviation[Factor.TEMPERATURE.ordinal()] : Temperature.AMBIENT;
        return ConductanceCurve.of(piece(deviation, celsius), target(deviation, celsius));
    }

    /** The standard target before the switch at 23 degrees Celsius, on which it is trimmed. */
    ConductanceCurve standard(double[] deviation) {
        return ConductanceCurve.of(piece(deviation, Temperature.AMBIENT), study.standard());
    }

    /** The thresholds of the unit. */
    Trim trim(double[] deviation) {
        if (!study.tolerances().trimmed()) {
            return step.trim();
        }
        double sr = study.switchModel().effectiveDistance() * (1 + deviation[Factor.TRIM.ordinal()]);
        ConductanceCurve curve = standard(deviation);
        return new Trim(
                curve.conductance(sr),
                curve.conductance(sr * (1 + study.switchModel().differentialTravel())));
    }

    /** What trim, supply and mounting make of a distance, m. */
    static double finished(double distance, double[] deviation) {
        return Math.max(0, distance * (1 + deviation[Factor.SUPPLY.ordinal()]) + deviation[Factor.MOUNTING.ordinal()]);
    }

    private SolvedSwitch piece(double[] d, double celsius) {
        boolean built = Arrays.stream(Factor.values()).anyMatch(f -> f.ofSwitch() && d[f.ordinal()] != 0);
        SolvedSwitch solved = step.solved();
        if (!built && celsius == Temperature.AMBIENT) {
            return solved;
        }
        SwitchModel m = solved.model();
        double back = -d[Factor.CAP.ordinal()];
        double coil = back + d[Factor.COIL.ordinal()];
        List<Part> parts = m.parts().stream()
                .map(p -> p.role() == Role.CORE
                        ? p.of(core(p.material(), d[Factor.FERRITE.ordinal()])).shifted(back)
                        : p)
                .map(p -> celsius == Temperature.AMBIENT ? p : p.of(p.material().heldAt(celsius)))
                .toList();
        return solved.built(
                m.with(parts, m.winding().shifted(coil).at(celsius)),
                solved.capacitance() * (1 + d[Factor.CAPACITOR.ordinal()]));
    }

    private static Material core(Material m, double deviation) {
        return deviation == 0 ? m : m.magnetic(Math.max(1, m.muReal() * (1 + deviation)), m.muImag());
    }

    private Target target(double[] d, double celsius) {
        Target target = study.target();
        double sigma = d[Factor.CONDUCTIVITY.ordinal()];
        double mu = d[Factor.PERMEABILITY.ordinal()];
        double thick = d[Factor.THICKNESS.ordinal()];
        if (thick != 0) {
            target = Variants.thickness(target, 1 + thick).orElseThrow();
        }
        return target.made(m -> (mu == 0 || m.muReal() == 1
                                ? m
                                : m.magnetic(Math.max(1, m.muReal() * (1 + mu)), m.muImag()))
                        .conducting((1 + sigma) * m.conductivity20())
                        .heldAt(celsius))
                .beside(d[Factor.OFFSET.ordinal()]);
    }

    /** How far a factor is moved to see what it does: its limit, or more where a new mesh would hide so little. */
    double reach(Factor factor) {
        double limit = study.tolerances().limit(factor);
        if (factor == Factor.OFFSET) {
            return Math.sqrt(2) * limit;
        }
        if (factor != Factor.COIL && factor != Factor.CAP) {
            return limit;
        }
        double least = AccuracyPolicy.DIMENSION_CHANGE * study.switchModel().faceDiameter();
        double room = SeriesReader.room(study.switchModel(), factor == Factor.CAP);
        return Math.max(limit, Math.min(least, room));
    }
}
