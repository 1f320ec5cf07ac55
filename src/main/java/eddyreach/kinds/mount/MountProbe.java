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
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.study.StudyInput;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public MountProbe(StudyInput study, ResolutionLadder ladder, List<Target> targets) {
        this.study = study;
        this.targets = List.copyOf(targets);
        steps = IntStream.rangeClosed(0, ResolutionLadder.FIRST)
                .mapToObj(ladder::step)
                .toArray(ResolutionLadder.Step[]::new);
        free = IntStream.rangeClosed(0, ResolutionLadder.FIRST)
                .mapToObj(s -> targets.stream().map(t -> inFreeAir(t, s)).toList())
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
    SolvedSwitch solved(Mount mount, int step) {
        return steps[step].solved().operatorsIn(mount.parts(study.switchModel().coreRadius()), bytes -> {});
    }

    /** Where the targets switch in free air at the step that gives results. */
    public List<SwitchDistance> free() {
        return free.get(ResolutionLadder.FIRST);
    }

    /**
     * A mount at the coarse step, without an error bar worth the name; the worse of its bounds.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Reading coarse(Mount mount) {
        return mount.bounds().stream()
                .map(m -> {
                    SolvedSwitch solved = solved(m, 0);
                    return read(m, 0, solved, solved);
                })
                .max((a, b) ->
                        a.safe() == b.safe() ? Double.compare(a.used(), b.used()) : Boolean.compare(b.safe(), a.safe()))
                .orElseThrow();
    }

    /**
     * A mount at the step that gives results.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Reading fine(Mount mount) {
        return fine(mount, solved(mount, 0), solved(mount, ResolutionLadder.FIRST));
    }

    /**
     * The same with its solved switches.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Reading fine(Mount mount, SolvedSwitch rough, SolvedSwitch solved) {
        return read(mount, ResolutionLadder.FIRST, rough, solved);
    }

    private Reading read(Mount mount, int step, SolvedSwitch rough, SolvedSwitch solved) {
        double without = WorstDamping.without(solved, mount).conductance();
        double air = steps[step].solved().free().conductance();
        List<Sight> sights = new ArrayList<>();
        for (int i = 0; i < targets.size(); i++) {
            sights.add(sight(mount, step, rough, solved, i));
        }
        return new Reading(
                step,
                (without - air) / (steps[step].trim().on() - air),
                MountCase.Verdict.of(without, steps[step].trim()),
                sights);
    }

    private Sight sight(Mount mount, int step, SolvedSwitch rough, SolvedSwitch solved, int i) {
        Target target = targets.get(i);
        double floor = mount.floor(target);
        // a target that switches before it dips into a recess need not be followed down there
        double from = Math.max(floor, solved.plane());
        MountedSwitch mounted = new MountedSwitch(solved, target, mount.background(), from);
        // at the coarse step both are one and the same, which need not be solved twice
        MountedSwitch other = solved == rough ? mounted : new MountedSwitch(rough, target, mount.background(), from);
        SwitchDistance d = search(target, mount, step, other, mounted);
        if (d.outcome() == SwitchDistance.Outcome.NEVER_ON && floor < from) {
            from = floor;
            mounted = mounted.downTo(floor);
            other = solved == rough ? mounted : other.downTo(floor);
            d = search(target, mount, step, other, mounted);
        }
        if (d.outcome() != SwitchDistance.Outcome.SWITCHES) {
            return new Sight(d, Double.NaN, Double.NaN);
        }
        double sr = study.switchModel().effectiveDistance();
        double low = Math.max(from, d.on() - AccuracyPolicy.SLOPE_STEP * sr);
        double high = d.on() + AccuracyPolicy.SLOPE_STEP * sr;
        double fall =
                Math.log(mounted.state(low).conductance() / mounted.state(high).conductance());
        return new Sight(d, (d.on() - free.get(step).get(i).on()) / sr, (high - low) / Math.abs(fall));
    }

    private SwitchDistance inFreeAir(Target target, int step) {
        MountedSwitch mounted = new MountedSwitch(steps[step].solved(), target, Optional.empty(), 0);
        MountedSwitch rough = step == 0 ? mounted : new MountedSwitch(steps[0].solved(), target, Optional.empty(), 0);
        return search(target, Mount.freeAir(), step, rough, mounted);
    }

    private SwitchDistance search(Target target, Mount mount, int step, MountedSwitch rough, MountedSwitch mounted) {
        return MountedApproach.search(
                        study.setup(),
                        StudyInput.defaultReach(study.switchModel()),
                        mount,
                        target,
                        steps[step],
                        steps[0],
                        mounted,
                        rough,
                        step == 0 ? AccuracyPolicy.ROUGH_INTERVALS : AccuracyPolicy.APPROACH_INTERVALS)
                .distance();
    }

    /**
     * How far the joined result is from everything in one field problem, as a share of the change of impedance by the first target where
     * it switches on; empty where the direct solve does not apply.
     */
    OptionalDouble direct(Mount mount, SolvedSwitch solved, Reading reading) {
        Target target = targets.get(0);
        double on = reading.sights().get(0).distance().on();
        boolean apart = on >= solved.plane();
        if (!Double.isFinite(on)
                || !apart
                || mount.background().isPresent()
                || target.body() instanceof Body.Ball
                || target.withoutEffect()
                || solved.fields().endless(target)) {
            return OptionalDouble.empty();
        }
        TankState state = solved.state(solved.reflector(target), on);
        List<Part> parts = target.parts().stream().map(p -> p.shifted(on)).toList();
        Complex direct = new DirectSolve(
                        solved.parts(),
                        solved.coil(state.omega()),
                        parts,
                        state.omega(),
                        solved.celsius(),
                        solved.resolution().body(),
                        solved.scale())
                .change();
        return OptionalDouble.of(
                direct.subtract(state.change()).abs() / state.change().abs());
    }
}
