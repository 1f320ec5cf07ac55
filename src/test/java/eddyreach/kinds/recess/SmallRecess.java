package eddyreach.kinds.recess;

import eddyreach.engine.core.Progress;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import eddyreach.study.Checkpoint;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A recess map of a few cells, computed once for all tests that look at one. */
public final class SmallRecess {

    private static final String STUDY = """
            eddyreach: study
            name: a recess
            kind: recess
            switch: m8-non-flush
            wall: {materials: [fe360], thickness: 14 mm, hole: tapped}
            diameters: {from: 9 mm, to: 25 mm, points: 2}
            depths: {from: 2 mm, to: 7 mm, points: 3}
            recess: {diameter: 22 mm, depth: 7 mm}
            """;

    private static SmallRecess known;

    private final RecessInput input;
    private final Recorder recorder = new Recorder(List.of(), Integer.MAX_VALUE);
    private final RecessResult result;

    private SmallRecess() {
        try {
            Path folder = Files.createTempDirectory("recess");
            Path file = Files.writeString(folder.resolve("s.yaml"), STUDY);
            input = (RecessInput) StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")));
            Files.delete(file);
            Files.delete(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        result = RecessRunner.run(input, Progress.NONE, recorder);
    }

    /** The map, never stopped. */
    public static synchronized SmallRecess get() {
        if (known == null) {
            known = new SmallRecess();
        }
        return known;
    }

    RecessInput input() {
        return input;
    }

    /** All cells, coarse and fine, as they were computed. */
    List<RecessCell> cells() {
        return recorder.cells;
    }

    public RecessResult result() {
        return result;
    }

    /** Keeps cells, and asks to stop after some. */
    static final class Recorder implements Checkpoint {

        private final List<RecessCell> kept;
        private final int most;
        private final List<RecessCell> cells = new CopyOnWriteArrayList<>();

        Recorder(List<RecessCell> kept, int most) {
            this.kept = kept;
            this.most = most;
        }

        List<RecessCell> cells() {
            return cells;
        }

        @Override
        public boolean stop() {
            return cells.size() >= most;
        }

        @Override
        public List<String> kept() {
            return kept.stream().map(RecessCell::line).toList();
        }

        @Override
        public void keep(String line) {
            cells.add(RecessCell.of(line).orElseThrow());
        }
    }
}
