package eddyreach.field.axial;

import eddyreach.field.join.Join;
import eddyreach.field.join.Reflection;
import eddyreach.field.targets.PlateTarget;
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

/** The field problem of the reference switch and what is done with its operator. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class OperatorBenchmark {

    private final Resolution resolution = Resolution.FINE;
    private final WaveBasis basis = resolution.waves(ReferenceSwitch.SCALE, 0);
    private final Layout layout = layout();
    private final Media media = Media.of(layout.parts, 0, ReferenceSwitch.OMEGA, 20);
    private final Join join = ReferenceSwitch.field(resolution).at(ReferenceSwitch.OMEGA);
    private final Reflection disc =
            ReferenceSwitch.target(ReferenceSwitch.STEEL, resolution).at(ReferenceSwitch.OMEGA);
    private final PlateTarget plate = new PlateTarget(eddyreach.closedform.LayeredPlate.single(6e6, 150, 1e-3), basis);
    private double gap = 1e-3;

    private Layout layout() {
        return new Layout(
                ReferenceSwitch.parts(),
                ReferenceSwitch.COIL,
                basis,
                1,
                resolution.body(),
                ReferenceSwitch.SCALE,
                ReferenceSwitch.OMEGA,
                20);
    }

    private double nextGap() {
        gap = gap > 8e-3 ? 0.5e-3 : gap + 1e-5;
        return gap;
    }

    /** Mesh, tables of integrals, ordering and symbolic analysis. */
    @Benchmark
    public Object layoutAndOrdering() {
        return layout();
    }

    /** Assembly, factorisation and Schur complement on 25 loads: S, s and Z0 at one frequency. */
    @Benchmark
    public Object factorAndOperator() {
        return new Scatterer(layout, media, ReferenceSwitch.COIL, ReferenceSwitch.OMEGA, false);
    }

    /** The whole switch operator at one frequency from its parts. */
    @Benchmark
    public Object switchOperator() {
        return new Scatterer(layout(), media, ReferenceSwitch.COIL, ReferenceSwitch.OMEGA, false);
    }

    /** The operator of a target disc at two frequencies. */
    @Benchmark
    public Object targetOperator() {
        return ReferenceSwitch.target(ReferenceSwitch.STEEL, resolution);
    }

    /** One more distance of an endless plate whose reflection is known. */
    @Benchmark
    public Complex plateDistance() {
        return join.impedance(plate.at(ReferenceSwitch.OMEGA), nextGap());
    }

    /** One more distance of a disc. */
    @Benchmark
    public Complex discDistance() {
        return join.impedance(disc, nextGap());
    }
}
