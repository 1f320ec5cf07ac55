package eddyreach.engine.mounted;

import eddyreach.engine.core.AccuracyPolicy;
import eddyreach.engine.core.Curve;
import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.ErrorBar;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.Setup;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.linalg.MemoryException;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.Crossing;
import eddyreach.switching.SwitchPointFinder;
import eddyreach.switching.SwitchPoints;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.complex.Complex;

/**
 * One target that comes nearer to one mounted switch, computed at two steps of the ladder, whose difference is the error bar ({@link ErrorBar}).
 */
public final class MountedApproach {

    private final ResolutionLadder.Step fine;
    private final ResolutionLadder.Step coarse;
    private final MountedSwitch mounted;
    private final MountedSwitch rough;
    private final double last;
    private final ErrorBar bar;
    private final int intervals;
    private final Map<Double, TankState> known = new ConcurrentHashMap<>();

    /**
     * @param fine the step that gives the result
     * @param coarse the step before
     * @param mounted switch and mount at the finer step
     * @param rough the same at the coarser step
     * @param last largest distance examined, m
     * @param trimmedHere true for the standard target where the switch is trimmed on it, in free air
     */
    public MountedApproach(
            ResolutionLadder.Step fine,
            ResolutionLadder.Step coarse,
            MountedSwitch mounted,
            MountedSwitch rough,
            double last,
            boolean trimmedHere) {
        this(fine, coarse, mounted, rough, last, trimmedHere, AccuracyPolicy.APPROACH_INTERVALS);
    }

    /** The same with another number of intervals. */
    public MountedApproach(
            ResolutionLadder.Step fine,
            ResolutionLadder.Step coarse,
            MountedSwitch mounted,
            MountedSwitch rough,
            double last,
            boolean trimmedHere,
            int intervals) {
        this.fine = fine;
        this.coarse = coarse;
        this.mounted = mounted;
        this.rough = rough;
        this.last = last;
        bar = ErrorBar.of(model(), trimmedHere);
        this.intervals = intervals;
    }

    /** How far a target is followed and what it does there. What is drawn plays no part in it. */
    public record Found(MountedApproach approach, SwitchDistance distance) {}

    /**
     * A target that comes nearer from as far as it takes: where it switches within the usual range, or, while the output has not gone off
     * yet at its end, within twice and four times that.
     *
     * @param setup the switch and its standard target
     * @param usual usual range of distances, m
     * @param fine step of the ladder that gives the result
     * @param coarse the step before
     * @param mounted the mounted at the finer step
     * @param rough the mounted at the coarser step
     * @param intervals intervals in which the switch points are looked for
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public static Found search(
            Setup setup,
            double usual,
            Mount mount,
            Target target,
            ResolutionLadder.Step fine,
            ResolutionLadder.Step coarse,
            MountedSwitch mounted,
            MountedSwitch rough,
            int intervals) {
        // the switch is trimmed on the standard target in free air: there the errors are one and the same
        boolean trimmed = mount.isEmpty() && target.actsAs(setup.standard());
        double room =
                mount.background().map(b -> b.distance() - target.thickness()).orElse(Double.POSITIVE_INFINITY);
        double reach = Math.max(usual, mounted.floor() + setup.switchModel().ratedDistance());
        while (true) {
            double last = Math.min(reach, room);
            MountedApproach a = new MountedApproach(fine, coarse, mounted, rough, last, trimmed, intervals);
            SwitchDistance d = a.distance();
            if (d.outcome() != SwitchDistance.Outcome.BEYOND_RANGE
                    || last == room
                    || reach >= AccuracyPolicy.MOUNT_FARTHEST * usual) {
                return new Found(a, d);
            }
            reach *= 2;
        }
    }

    private TankState state(double distance) {
        return known.computeIfAbsent(distance, mounted::state);
    }

    /**
     * Where the output switches.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public SwitchDistance distance() {
        double floor = mounted.floor();
        SwitchPoints points = new SwitchPointFinder(fine.trim(), last - floor, intervals)
                .find(g -> state(g + floor).conductance(), mounted.without().conductance());
        Optional<Crossing> on = points.on();
        Optional<Crossing> off = points.off();
        double onAt = on.map(c -> c.distance() + floor).orElse(Double.NaN);
        double offAt = off.map(c -> c.distance() + floor).orElse(Double.NaN);
        return new SwitchDistance(
                on.isPresent() && off.isPresent() && points instanceof SwitchPoints.Switches
                        ? SwitchDistance.Outcome.SWITCHES
                        : DistanceFinder.unfinished(points),
                onAt,
                offAt,
                on.map(c -> error(c, coarse.trim().on())).orElse(Double.NaN),
                off.map(c -> error(c, coarse.trim().off())).orElse(Double.NaN));
    }

    private double error(Crossing crossing, double threshold) {
        double g = crossing.distance() + mounted.floor();
        TankState here = mounted.state(g);
        TankState there = rough.state(g);
        Complex wrong = mounted.stairs(here.omega(), g);
        // the conductance goes as R/L, and with the frequency a little more
        double stairs = here.conductance()
                * (wrong.getReal() / here.resistance() + wrong.getImaginary() / (here.omega() * here.inductance()));
        return bar.distance(
                crossing,
                bar.conductance(there.conductance() - threshold, here, there, mounted.interpolation(here.omega(), g))
                        + stairs
                        + mounted.truncation(g) * here.conductancePerOhm()
                        + mounted.outline(here, g));
    }

    private SwitchModel model() {
        return mounted.solved().model();
    }

    /**
     * The tank over even distances.
     *
     * @param first first distance, m; the nearest possible one where a mount stops the target before
     * @param end last distance, m
     * @param n number of distances
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Curve curve(double first, double end, int n) {
        Curve.Builder curve = new Curve.Builder(n);
        double from = Math.max(first, mounted.floor());
        TankState without = mounted.without();
        for (int i = 0; i < n; i++) {
            double g = from + (end - from) * i / (n - 1);
            TankState s = state(g);
            curve.add(
                    g,
                    s,
                    s.resistance() - without.resistance(),
                    s.inductance() - without.inductance(),
                    ErrorBar.ofDifference(
                                    s.change().subtract(rough.state(g).change()).abs())
                            + mounted.stairs(s.omega(), g).abs()
                            + mounted.truncation(g),
                    model().element().amplitude(s.conductance()));
        }
        return curve.build();
    }
}
