package eddyreach.field.join;

import static eddyreach.field.axial.ReferenceSwitch.MM;
import static eddyreach.field.axial.ReferenceSwitch.OMEGA;

import eddyreach.field.axial.Band;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.targets.BodyTarget;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.complex.Complex;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A detection zone of a steel disc in front of the reference switch. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 3, time = 4)
public class OffAxisBenchmark {

    private static final int OFFSETS = 60;
    private static final double WIDEST = 15 * MM;
    private static final int EVALUATIONS = 12;

    private final Resolution resolution = Resolution.FINE.withoutFields();
    private final WaveBasis basis = resolution.waves(ReferenceSwitch.SCALE, 18 * MM / Math.sqrt(Math.PI), WIDEST);
    private final SwitchField field = side();
    private final BodyTarget disc = disc();
    private int next;

    private SwitchField side() {
        return new SwitchField(
                ReferenceSwitch.parts(),
                w -> ReferenceSwitch.COIL,
                basis,
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                resolution,
                ReferenceSwitch.SCALE);
    }

    private BodyTarget disc() {
        return new BodyTarget(
                ReferenceSwitch.disc(ReferenceSwitch.STEEL, 0),
                basis,
                new Band(OMEGA, 1.15 * OMEGA),
                20,
                resolution,
                ReferenceSwitch.SCALE);
    }

    /** All orders of both sides, then 60 offsets with two distances each, found in 12 evaluations at as many frequencies. */
    @Benchmark
    public Complex zone() {
        return zone(side(), disc());
    }

    /** The same once all orders are solved. */
    @Benchmark
    public Complex zoneOfKnownOperators() {
        return zone(field, disc);
    }

    private static Complex zone(SwitchField field, BodyTarget disc) {
        Complex sum = Complex.ZERO;
        for (int i = 0; i < OFFSETS; i++) {
            double offset = WIDEST * i / OFFSETS;
            // from 3 mm on the axis down to 0.6 mm far beside it, as a curve of constant damping runs
            double gap = 3 * MM - 2.4 * MM * i / OFFSETS;
            for (int e = 0; e < 2 * EVALUATIONS; e++) {
                OffAxisJoin join = field.beside(OMEGA * (1 + 0.003 * e));
                sum = sum.add(join.at(disc, offset).impedance(gap + 0.01 * MM * e));
            }
        }
        return sum;
    }

    /** One more distance 6 mm beside the axis. */
    @Benchmark
    public Complex offAxisDistance() {
        next = (next + 1) % 200;
        return field.beside(OMEGA).at(disc, 6 * MM).impedance(1 * MM + next * 0.02 * MM);
    }
}
