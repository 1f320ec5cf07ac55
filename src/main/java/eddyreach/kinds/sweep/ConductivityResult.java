package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.materials.Material;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * On distance over conductivity and permeability.
 *
 * @param header what the study said of itself
 * @param input what was asked
 * @param trimmed the switch without a target
 * @param conductivities conductivities of the columns, S/m, ascending
 * @param permeabilities relative permeabilities of the rows, ascending
 * @param rows where a target switches, by permeability and conductivity
 * @param dots the materials marked
 * @param wavenumber the dominant wavenumber at the effective distance, 1/m
 * @param reason why the map looks as it does
 * @param warnings limits that concern the study
 */
public record ConductivityResult(
        StudyHeader header,
        SweepInput.Conductivity input,
        TrimmedSwitch trimmed,
        double[] conductivities,
        double[] permeabilities,
        List<List<SwitchDistance>> rows,
        List<Dot> dots,
        double wavenumber,
        String reason,
        List<Warning> warnings)
        implements StudyResult {

    public ConductivityResult {
        rows = rows.stream().map(List::copyOf).toList();
        dots = List.copyOf(dots);
        warnings = List.copyOf(warnings);
    }

    /**
     * A material on the map.
     *
     * @param material the material
     * @param conductivity its conductivity at the temperature of the study, S/m
     * @param skinDepth its skin depth at the frequency without a target, m
     * @param distance where it switches, computed with its own values
     */
    public record Dot(Material material, double conductivity, double skinDepth, SwitchDistance distance) {}

    @Override
    public Presentation presentation() {
        return new ConductivityPresentation(this);
    }
}
