package eddyreach.kinds.mount;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.engine.mounted.MountedApproach;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.field.axial.DirectSolve;
import eddyreach.geometry.Part;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.study.StudyInput;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;

/** Looks at one mount after another: what is left without a target and where targets switch. For several threads. */
public final class MountProbe {

    private final StudyInput study;
    private final ResolutionLadder.Step[] steps;
    private final List<Target> targets;
    private final List<List<SwitchDistance>> free;

    /**
     * @param study the switch and its standard target
     * @param ladder the switch in free air
     * @param targets what comes nearer
     */
    public MountProbe(StudyInput study, ResolutionLadder ladder, List<Target> targets) {
        this.study = study;
        this.targets = List.copyOf(targets);
        steps = IntStream.rangeClosed(0, ResolutionLadder.FIRST)
                .mapToObj(ladder::step)
                .toArray(ResolutionLadder.Step[]::new);
        free = IntStream.rangeClosed(0, ResolutionLadder.FIRST)
                .mapToObj(s -> targets.stream()
                        .map(t -> search(t, Mount.freeAir(), s, steps[0].bench(), steps[s].bench(), 0))
                        .toList())
                .toList();
    }

    /**
     * What was found.
     *
     * @param step step of the ladder
     * @param used share of the reserve that the mount takes up
     * @param verdict what the output does without a target
     * @param sights what the targets do
     */
    public record Reading(int step, double used, MountCase.Verdict verdict, List<Sight> sights) {

        /** True when it releases with care and moves the targets by no more than a tenth. */
        boolean safe() {
            return verdict == MountCase.Verdict.RELEASED
                    && used <= MountCase.CAREFUL
                    && sights.stream().allMatch(s -> Math.abs(s.shift()) <= MountTarget.LARGEST_SHIFT);
        }
    }

    /**
     * What one target does.
     *
     * @param distance where it switches
     * @param shift switch-on distance against that in free air, relative to s_r; NaN unless it switches
     * @param lever change of the switch-on distance, m, by a change of the conductance by its own value; NaN unless it switches
     */
    public record Sight(SwitchDistance distance, double shift, double lever) {}

    /** The switch in a mount at a step of the ladder. */
    SolvedSwitch bench(Mount mount, int step) {
        return steps[step]
                .bench()
                .in(mount.parts(study.switchModel().coreRadius(), AccuracyPolicy.coneSteps(step)), bytes -> {});
    }

    /** Where the targets switch in free air at the step that gives results. */
    public List<SwitchDistance> free() {
        return free.get(ResolutionLadder.FIRST);
    }

    /** A mount at the coarse step, without an error bar worth the name; the worse of its bounds. */
    public Reading coarse(Mount mount) {
        return mount.bounds().stream()
                .map(m -> {
                    SolvedSwitch bench = bench(m, 0);
                    return read(m, 0, bench, bench);
                })
                .max((a, b) ->
                        a.safe() == b.safe() ? Double.compare(a.used(), b.used()) : Boolean.compare(b.safe(), a.safe()))
                .orElseThrow();
    }

    /** A mount at the step that gives results. */
    public Reading fine(Mount mount) {
        return fine(mount, bench(mount, 0), bench(mount, ResolutionLadder.FIRST));
    }

    /** The same with its benches. */
    public Reading fine(Mount mount, SolvedSwitch rough, SolvedSwitch bench) {
        return read(mount, ResolutionLadder.FIRST, rough, bench);
    }

    private Reading read(Mount mount, int step, SolvedSwitch rough, SolvedSwitch bench) {
        double without = WorstDamping.without(bench, mount).conductance();
        double air = steps[step].bench().free().conductance();
        List<Sight> sights = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            sights.add(sight(mount, step, rough, bench, i));
        }
        return new Reading(
                step,
                (without - air) / (steps[step].trim().on() - air),
                MountCase.Verdict.of(without, steps[step].trim()),
                sights);
    }

    private Sight sight(Mount mount, int step, SolvedSwitch rough, SolvedSwitch bench, int i) {
        Target target = targets.get(i);
        double floor = mount.floor(target);
        // a target that switches before it dips into a recess need not be followed down there
        double from = Math.max(floor, bench.plane());
        SwitchDistance d = search(target, mount, step, rough, bench, from);
        if (d.outcome() == SwitchDistance.Outcome.NEVER_ON && floor < from) {
            from = floor;
            d = search(target, mount, step, rough, bench, from);
        }
        if (d.outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Sight(d, Double.NaN, Double.NaN);
        }
        double sr = study.switchModel().effectiveDistance();
        MountedSwitch scene = new MountedSwitch(bench, target, mount.background(), from);
        double low = Math.max(from, d.on() - AccuracyPolicy.SLOPE_STEP * sr);
        double high = d.on() + AccuracyPolicy.SLOPE_STEP * sr;
        double fall =
                Math.log(scene.state(low).conductance() / scene.state(high).conductance());
        return new Sight(d, (d.on() - free.get(step).get(i).on()) / sr, (high - low) / Math.abs(fall));
    }

    private SwitchDistance search(
            Target target, Mount mount, int step, SolvedSwitch rough, SolvedSwitch bench, double floor) {
        return MountedApproach.search(
                        study.setup(),
                        StudyInput.defaultReach(study.switchModel()),
                        mount,
                        target,
                        steps[step],
                        steps[0],
                        new MountedSwitch(bench, target, mount.background(), floor),
                        new MountedSwitch(rough, target, mount.background(), floor),
                        step == 0 ? AccuracyPolicy.ROUGH_INTERVALS : AccuracyPolicy.APPROACH_INTERVALS)
                .distance();
    }

    /**
     * How far the joined result is from everything in one field problem, as a share of the change of impedance by the first target where
     * it switches on; empty where the direct solve does not apply.
     */
    OptionalDouble direct(Mount mount, SolvedSwitch bench, Reading reading) {
        Target target = targets.get(0);
        double on = reading.sights().get(0).distance().on();
        boolean apart = on >= bench.plane();
        if (!Double.isFinite(on)
                || !apart
                || mount.background().isPresent()
                || target.body() instanceof Body.Ball
                || target.withoutEffect()
                || bench.fields().endless(target)) {
            return OptionalDouble.empty();
        }
        TankState state = bench.state(bench.reflector(target), on);
        List<Part> parts = target.parts().stream().map(p -> p.shifted(on)).toList();
        Complex direct = new DirectSolve(
                        bench.parts(),
                        bench.coil(state.omega()),
                        parts,
                        state.omega(),
                        bench.celsius(),
                        bench.resolution().body(),
                        bench.scale())
                .change();
        return OptionalDouble.of(
                direct.subtract(state.change()).abs() / state.change().abs());
    }
}
