package eddyreach.kinds.mount;

import eddyreach.engine.core.Curve;
import eddyreach.engine.core.Operating;
import eddyreach.engine.core.ValidityLimits;
import eddyreach.engine.core.Warning;
import eddyreach.model.values.Mount;
import eddyreach.oscillator.ActiveElement;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A wall that ends at a straight edge beside the switch, from two that are round about the axis: one without that edge and one that ends
 * all round at the edge's distance.
 *
 * <p>In metal that acts as a resistor, the currents are those free of divergence that take most power, {@code max over J in the metal of 2 int
 * J.E - int J^2/sigma}: more metal takes more, and the true plate, which holds the round one and lies in the endless one, lies between them.
 * So does static magnetic energy. Where the skin is thin the loss need not grow with the plate, and the bounds are no theorem:
 * of thick aluminium the loss lay just outside them where they hardly differ, its change of impedance never did.
 *
 * <p>How far between: for a thin sheet in the field of a dipole at height h whose edge lies at e, with s = e / sqrt(e^2 + h^2), the stream
 * function minus the harmonic one of the same values along the edge gives, over the loss in the endless sheet,
 *
 * <pre>round 1: s^4   straight: 1/2 + s/4 + s^3/4 - (4/pi^2)(1 - s^2)</pre>
 *
 * that is 0.42 of the way from round to endless at e = h and 0.5 at e = 2 h. By orders about the axis of a wide disc, thick aluminium and steel
 * are at 0.5 to 0.9 of it otherwise. The middle is given, and the bar holds both bounds.
 */
final class StraightEdge {

    private StraightEdge() {}

    /**
     * What holds for a mount with a straight edge. Distances, shifts and reserve are the middle of the bounds with both inside the bar;
     * verdicts, corners and losses by part are those of the worse one.
     *
     * @param mount the mount
     * @param whole what was found without the edge
     * @param round what was found for the wall that ends all round
     */
    static MountCase between(Mount mount, MountCase whole, MountCase round, ActiveElement element) {
        MountCase worse = round.reserve().used() > whole.reserve().used() ? round : whole;
        List<MountCase.Corner> corners = IntStream.range(0, whole.corners().size())
                .mapToObj(i -> worse(whole.corners().get(i), round.corners().get(i)))
                .toList();
        List<MountTarget> targets = IntStream.range(0, whole.targets().size())
                .mapToObj(i -> between(whole.targets().get(i), round.targets().get(i), element))
                .toList();
        List<Warning> warnings = new ArrayList<>(Stream.concat(whole.warnings().stream(), round.warnings().stream())
                .distinct()
                .toList());
        warnings.add(ValidityLimits.edge(mount.id(), mount.wall().orElseThrow().edge()));
        return new MountCase(
                mount,
                whole.parts(),
                between(whole.undamped(), round.undamped(), element),
                between(whole.reserve(), round.reserve()),
                corners,
                worse(whole.verdict(), round.verdict()),
                targets,
                worse.budget(),
                Math.max(whole.unknowns(), round.unknowns()),
                List.of(),
                List.of(),
                warnings);
    }

    private static double middle(double a, double b) {
        return (a + b) / 2;
    }

    private static double apart(double a, double b) {
        return Math.abs(a - b) / 2;
    }

    private static double bar(double a, double b, double errorA, double errorB) {
        return apart(a, b) + Math.max(errorA, errorB);
    }

    private static MountCase.Verdict worse(MountCase.Verdict a, MountCase.Verdict b) {
        return a.compareTo(b) > 0 ? a : b;
    }

    private static MountCase.Corner worse(MountCase.Corner a, MountCase.Corner b) {
        return new MountCase.Corner(
                a.celsius(),
                a.trim(),
                Math.max(a.used(), b.used()),
                worse(a.verdict(), b.verdict()),
                Math.max(a.bare(), b.bare()),
                worse(a.bareVerdict(), b.bareVerdict()));
    }

    private static Operating between(Operating a, Operating b, ActiveElement element) {
        double conductance = middle(a.conductance(), b.conductance());
        return new Operating(
                middle(a.resistance(), b.resistance()),
                middle(a.inductance(), b.inductance()),
                middle(a.frequency(), b.frequency()),
                conductance,
                element.amplitude(conductance));
    }

    private static MountCase.Reserve between(MountCase.Reserve a, MountCase.Reserve b) {
        return new MountCase.Reserve(
                middle(a.total(), b.total()),
                middle(a.used(), b.used()),
                bar(a.used(), b.used(), a.error(), b.error()),
                apart(a.used(), b.used()));
    }

    private static MountTarget between(MountTarget a, MountTarget b, ActiveElement element) {
        return new MountTarget(
                a.target(),
                a.floor(),
                between(a.curve(), b.curve(), element),
                a.distance().between(b.distance()),
                a.free(),
                middle(a.shift(), b.shift()),
                bar(a.shift(), b.shift(), a.shiftError(), b.shiftError()),
                apart(a.shift(), b.shift()),
                a.assurance().flatMap(x -> b.assurance().map(x::worse)));
    }

    private static Curve between(Curve a, Curve b, ActiveElement element) {
        double[] error = new double[a.size()];
        for (int i = 0; i < error.length; i++) {
            double apart = Math.hypot(
                    apart(a.lossResistance(i), b.lossResistance(i)),
                    2 * Math.PI * a.frequency(i) * apart(a.inductanceChange(i), b.inductanceChange(i)));
            error[i] = apart + Math.max(a.impedanceError(i), b.impedanceError(i));
        }
        DoubleBinaryOperator middle = StraightEdge::middle;
        double[] conductance = each(middle, a.conductance(), b.conductance());
        return new Curve(
                a.distance(),
                each(middle, a.lossResistance(), b.lossResistance()),
                each(middle, a.inductanceChange(), b.inductanceChange()),
                error,
                each(middle, a.resistance(), b.resistance()),
                each(middle, a.inductance(), b.inductance()),
                each(middle, a.frequency(), b.frequency()),
                conductance,
                DoubleStream.of(conductance).map(element::amplitude).toArray());
    }

    private static double[] each(DoubleBinaryOperator f, double[] a, double[] b) {
        return IntStream.range(0, a.length)
                .mapToDouble(i -> f.applyAsDouble(a[i], b[i]))
                .toArray();
    }
}
