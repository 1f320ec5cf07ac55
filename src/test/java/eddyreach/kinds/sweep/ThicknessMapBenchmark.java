package eddyreach.kinds.sweep;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import eddyreach.switching.SwitchPointFinder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** On and off distances of endless plates of five metals at 200 thicknesses from 50 nm to 5 mm, once the operator exists. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 3, time = 4)
public class ThicknessMapBenchmark {

    private static final int THICKNESSES = 200;
    private static final int INTERVALS = 12;

    private final ApproachInput study;
    private final StudyInput thickness;
    private final ResolutionLadder.Step step;
    private final List<Target> targets = new ArrayList<>();

    public ThicknessMapBenchmark() {
        Library library = new Library(Path.of(""));
        study = (ApproachInput) StudyReader.read(library.studyFile("m18-derating"), library);
        thickness = StudyReader.read(library.studyFile("m18-foil-thickness"), library);
        step = new ResolutionLadder(study.setup(), List.of(study.standard()), Progress.NONE)
                .step(ResolutionLadder.FIRST);
        for (String id : new String[] {"fe360", "stainless-304", "brass", "aluminium", "copper"}) {
            Material m = library.materials().get(id);
            for (int i = 0; i < THICKNESSES; i++) {
                double t = 50e-9 * Math.pow(1e5, i / (THICKNESSES - 1.0));
                targets.add(new Target(id + i, id, new Target.Outline.Endless(), List.of(new Layer(m, t))));
            }
        }
    }

    @Benchmark
    public Object thicknessMap() {
        return targets.parallelStream().map(this::points).toList();
    }

    /** The shipped thickness study as a whole: five metals, 61 thicknesses, error bars, the switch's field and trim. */
    @Benchmark
    public Object thicknessStudy() {
        return thickness.run();
    }

    private Object points(Target target) {
        var field = step.solved().target(target);
        return new SwitchPointFinder(step.trim(), study.lastDistance(), INTERVALS)
                .find(
                        g -> step.solved().state(field, g).conductance(),
                        step.solved().free().conductance());
    }
}
