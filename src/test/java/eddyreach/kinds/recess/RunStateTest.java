package eddyreach.kinds.recess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.mount.MountCase;
import eddyreach.model.read.Library;
import eddyreach.studies.StudyReader;
import eddyreach.study.RunState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunStateTest {

    private static final RecessCell CELL = new RecessCell(
            0,
            3,
            4,
            1,
            0.1 + 0.2,
            MountCase.Verdict.RELEASED,
            new SwitchDistance(SwitchDistance.Outcome.NEVER_OFF, 1 / 3.0, Double.NaN, 1e-17, Double.NaN),
            Double.NaN,
            Double.POSITIVE_INFINITY);

    @TempDir
    private Path folder;

    private static RecessInput study() {
        Library library = new Library(Path.of(""));
        return (RecessInput) StudyReader.read(library.studyFile("m18-recess"), library);
    }

    private RunState open(RecessInput study) throws IOException {
        return new RunState(folder, study, study.resumable().orElseThrow(), () -> false);
    }

    @Test
    void whatIsKeptIsExactAndBelongsToOneStudy() throws IOException {
        RunState state = open(study());
        assertThat(state.found()).isEqualTo(RunState.Found.NOTHING);
        state.keep(CELL.line());
        state.save();
        RunState again = open(study());
        assertThat(again.found()).isEqualTo(RunState.Found.LINES);
        assertThat(again.kept()).map(RecessCell::of).containsExactly(Optional.of(CELL));
        RecessInput s = study();
        RecessInput other = new RecessInput(
                s.header(),
                s.materials(),
                Math.nextUp(s.thickness()),
                s.outer(),
                s.bore(),
                s.surface(),
                s.bottom(),
                s.diameters(),
                s.depths(),
                s.drawn(),
                s.target());
        assertThat(open(other).found()).isEqualTo(RunState.Found.OTHER_STUDY);
        assertThat(open(other).kept()).isEmpty();
        again.remove();
        assertThat(folder).isEmptyDirectory();
    }

    /** Cut off anywhere, or with any byte changed, it is not used. */
    @Test
    void aDamagedFileIsNotUsed() throws IOException {
        RecessInput study = study();
        RunState state = open(study);
        state.keep(CELL.line());
        state.save();
        Path file = folder.resolve(RunState.NAME);
        byte[] whole = Files.readAllBytes(file);
        int head = new String(whole, StandardCharsets.US_ASCII).indexOf('\n') + 1;
        for (int n = head; n < whole.length; n += 7) {
            Files.writeString(file, new String(whole, 0, n, StandardCharsets.US_ASCII));
            assertThat(open(study).found()).as("first %d bytes", n).isEqualTo(RunState.Found.DAMAGED);
            byte[] changed = whole.clone();
            changed[n] ^= 1;
            Files.write(file, changed);
            assertThat(open(study).kept()).as("byte %d", n).isEmpty();
            assertThat(open(study).found()).as("byte %d", n).isEqualTo(RunState.Found.DAMAGED);
        }
    }

    /** A file that does not begin as a state does is somebody else's: the run does not begin, and the file stays. */
    @Test
    void aForeignFileOfItsNameIsLeftAlone() throws IOException {
        RecessInput study = study();
        Path file = folder.resolve(RunState.NAME);
        for (String text : new String[] {"", "eddyreach run", "my own notes\n"}) {
            Files.writeString(file, text);
            assertThatExceptionOfType(FileSystemException.class)
                    .isThrownBy(() -> open(study))
                    .withMessageContaining("is in the way");
            assertThat(file).hasContent(text);
        }
    }
}
