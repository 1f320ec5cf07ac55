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

    /**
     * What the map ranges over.
     *
     * @param seen points with a switch-on distance
     * @param all points
     * @param least smallest switch-on distance, m
     * @param most largest switch-on distance, m
     * @param conductivity conductivity of the largest, S/m
     * @param permeability relative permeability of the largest
     * @param error largest numerical error, m
     */
    public record Extremes(
            int seen, int all, double least, double most, double conductivity, double permeability, double error) {}

    public Extremes extremes() {
        int seen = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double sigma = Double.NaN;
        double mu = Double.NaN;
        double error = 0;
        for (int j = 0; j < rows.size(); j++) {
            for (int i = 0; i < rows.get(j).size(); i++) {
                SwitchDistance d = rows.get(j).get(i);
                if (!Double.isFinite(d.on())) {
                    continue;
                }
                seen++;
                least = Math.min(least, d.on());
                error = Math.max(error, d.onError());
                if (d.on() > most) {
                    most = d.on();
                    sigma = conductivities[i];
                    mu = permeabilities[j];
                }
            }
        }
        return new Extremes(seen, conductivities.length * permeabilities.length, least, most, sigma, mu, error);
    }

    /** True when a material lies within the ranges of the map, to rounding. */
    boolean covers(Dot d) {
        double mu = d.material().muReal();
        return within(d.conductivity(), conductivities) && within(mu, permeabilities);
    }

    private static boolean within(double value, double[] axis) {
        return value >= axis[0] * (1 - 1e-9) && value <= axis[axis.length - 1] * (1 + 1e-9);
    }

    @Override
    public Presentation presentation() {
        return new ConductivityPresentation(this);
    }
}
