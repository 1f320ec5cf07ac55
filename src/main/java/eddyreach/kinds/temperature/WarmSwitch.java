package eddyreach.kinds.temperature;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.Trim;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A switch of which some things follow the temperature and the others stay at 23 degrees Celsius.
 *
 * <p>Conductivities follow by their materials' coefficients; permeability and loss of the core, the capacitor and the thresholds by what the study states. Dimensions,
 * the active element and the permeability of the target stay.
 *
 * @param step the switch at 23 degrees, trimmed
 * @param drift what the materials do not tell
 */
record WarmSwitch(ResolutionLadder.Step step, Drift drift) {

    private static final Set<Cause> OF_SWITCH =
            EnumSet.of(Cause.WINDING, Cause.HOUSING, Cause.FERRITE, Cause.CAPACITOR);

    /** The switch at a temperature, degrees Celsius, where the given causes follow it. */
    SolvedSwitch at(Set<Cause> causes, double celsius) {
        SolvedSwitch solved = step.solved();
        if (causes.stream().noneMatch(OF_SWITCH::contains) || celsius == Temperature.AMBIENT) {
            return solved;
        }
        double kelvin = celsius - Temperature.AMBIENT;
        double capacitance = causes.contains(Cause.CAPACITOR) ? 1 + drift.capacitor() * kelvin : 1;
        return solved.built(warm(solved.model(), causes, celsius), capacitance * solved.capacitance());
    }

    /** The thresholds at a temperature, degrees Celsius, moved by a change per kelvin. */
    Trim trim(double perKelvin, double celsius) {
        double factor = 1 + perKelvin * (celsius - Temperature.AMBIENT);
        return new Trim(factor * step.trim().on(), factor * step.trim().off());
    }

    /** A target at a temperature, degrees Celsius, before a switch. */
    static ConductanceCurve curve(SolvedSwitch solved, Target target, double celsius) {
        return ConductanceCurve.of(solved, target.made(m -> m.heldAt(celsius)));
    }

    private SwitchModel warm(SwitchModel m, Set<Cause> causes, double celsius) {
        List<Part> parts = m.parts().stream().map(p -> warm(p, causes, celsius)).toList();
        return causes.contains(Cause.WINDING) ? m.with(parts, m.winding().at(celsius)) : m.with(parts, m.winding());
    }

    private Part warm(Part p, Set<Cause> causes, double celsius) {
        if (p.role() == Role.HOUSING && causes.contains(Cause.HOUSING)) {
            return p.of(p.material().heldAt(celsius));
        }
        return p.role() == Role.CORE && causes.contains(Cause.FERRITE) ? p.of(core(p.material(), celsius)) : p;
    }

    /** The core's own conductivity follows by its coefficient, as that of any material. */
    private Material core(Material m, double celsius) {
        double kelvin = celsius - Temperature.AMBIENT;
        double mu = Math.max(1, m.muReal() * (1 + drift.permeability() * kelvin));
        double loss = m.muImag() * (1 + drift.coreLoss() * kelvin);
        return m.magnetic(mu, loss).heldAt(celsius);
    }
}
