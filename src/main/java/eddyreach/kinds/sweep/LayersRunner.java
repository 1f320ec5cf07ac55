package eddyreach.kinds.sweep;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.engine.core.Wavenumber;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.materials.Temperature;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Runs studies of the kind {@code layers}. */
public final class LayersRunner {

    /** Round thicknesses that are told where they lie in the range, m. */
    private static final double[] TOLD = {0.1e-6, 0.5e-6, 2e-6, 5e-6, 10e-6, 20e-6, 50e-6, 100e-6, 200e-6, 500e-6, 1e-3
    };

    /** Round thicknesses in one table. */
    private static final int MOST_TOLD = 6;

    private LayersRunner() {}

    /**
     * Runs a study.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static LayersResult run(SweepInput.Layers study, Progress progress) {
        List<Material> coatings = study.coatings();
        Sweep sweep = new Sweep(study, study.searched(), List.of(study.bare()), progress);
        List<Target> others = new ArrayList<>(List.of(study.bare()));
        coatings.forEach(m -> others.add(study.solid(m)));
        List<SwitchDistance> solid = sweep.of(others, "bare and solid");
        Sweep.Curves all = sweep.curves(coatings, study.thicknesses().crowded(), study::target, "coatings");
        List<List<SweepPoint>> curves = all.points();
        double[] told = Arrays.stream(TOLD)
                .filter(t -> t >= study.thicknesses().first()
                        && t <= study.thicknesses().last())
                .toArray();
        told = Arrays.copyOfRange(told, Math.max(0, told.length - MOST_TOLD), told.length);
        List<Double> marks = Arrays.stream(told).boxed().toList();
        List<List<SweepPoint>> marked = sweep.further(
                all,
                coatings,
                Collections.nCopies(coatings.size(), marks),
                study.thicknesses()::crowdedIndex,
                study::target,
                "marked thicknesses");
        SwitchDistance bare = solid.get(0);
        double reference =
                Double.isFinite(bare.on()) ? bare.on() : study.switchModel().effectiveDistance();
        Set<Material> materials = new LinkedHashSet<>(coatings);
        study.base().stream().map(Layer::material).forEach(materials::add);
        List<Warning> warnings = ValidityLimits.sweep(study.outline(), materials, sweep.solved());
        double omega = sweep.solved().free().omega();
        double k = Wavenumber.dominant(study.switchModel(), reference);
        List<LayersResult.Item> items = new ArrayList<>();
        for (int i = 0; i < coatings.size(); i++) {
            Material m = coatings.get(i);
            SweepCurve curve = new SweepCurve(m.id(), m.name(), curves.get(i));
            items.add(new LayersResult.Item(
                    m,
                    curve,
                    solid.get(i + 1),
                    marked.get(i).stream()
                            .map(p -> new MarkedPoint(MarkedPoint.Mark.ROUND, p))
                            .toList(),
                    Wavenumber.sheetOptimum(m, omega, k),
                    m.skinDepth(omega, Temperature.AMBIENT)));
            ValidityLimits.errors(
                            m.id(),
                            curve.points().stream().map(SweepPoint::distance).toList(),
                            study.accuracy())
                    .ifPresent(warnings::add);
        }
        return new LayersResult(study.header(), study, sweep.trimmed(), bare, reference, items, warnings);
    }
}
