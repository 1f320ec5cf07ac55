package eddyreach.solved;

import eddyreach.model.read.Library;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import java.nio.file.Path;
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

/** The shipped derating study of eight materials, without files. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 4)
@Measurement(iterations = 3, time = 4)
public class StudyBenchmark {

    private final StudyInput study = input();

    private static StudyInput input() {
        Library library = new Library(Path.of(""));
        return StudyReader.read(library.studyFile("m18-derating"), library);
    }

    @Benchmark
    public Object deratingStudy() {
        return study.run();
    }
}
