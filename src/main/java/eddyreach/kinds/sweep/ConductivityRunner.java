package eddyreach.kinds.sweep;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.Wavenumber;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;

/** Runs studies of the kind {@code conductivity}. */
public final class ConductivityRunner {

    private ConductivityRunner() {}

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static ConductivityResult run(SweepInput.Conductivity study, Progress progress) {
        double[] sigma = study.conductivities().logarithmic();
        double[] mu = study.permeabilities().logarithmic();
        List<Target> targets = new ArrayList<>();
        for (double m : mu) {
            for (double s : sigma) {
                targets.add(study.target(new Material("map", "any metal", s, 0, m, 0, "varied")));
            }
        }
        Sweep sweep = new Sweep(study, study.searched(), targets.subList(0, 1), progress);
        List<SwitchDistance> found = sweep.of(targets, "metals of the map");
        List<List<SwitchDistance>> rows = new ArrayList<>();
        for (int j = 0; j < mu.length; j++) {
            rows.add(found.subList(j * sigma.length, (j + 1) * sigma.length));
        }
        double omega = sweep.solved().free().omega();
        List<SwitchDistance> marked =
                sweep.of(study.materials().stream().map(study::target).toList(), "materials");
        List<ConductivityResult.Dot> dots = new ArrayList<>();
        for (int i = 0; i < marked.size(); i++) {
            Material m = study.materials().get(i);
            dots.add(new ConductivityResult.Dot(
                    m, m.conductivity(Temperature.AMBIENT), m.skinDepth(omega, Temperature.AMBIENT), marked.get(i)));
        }
        List<Warning> warnings = ValidityLimits.sweep(study.outline(), study.materials(), sweep.solved());
        ValidityLimits.errors("map", found, study.accuracy()).ifPresent(warnings::add);
        ValidityLimits.errors("materials", marked, study.accuracy()).ifPresent(warnings::add);
        double k = Wavenumber.dominant(study.switchModel(), study.switchModel().effectiveDistance());
        return new ConductivityResult(study.header(), study, sweep.trimmed(), sigma, mu, rows, dots, k, warnings);
    }
}
