package eddyreach.report;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.model.Library;
import eddyreach.model.RecessInput;
import eddyreach.model.StudyReader;
import eddyreach.study.MountCase;
import eddyreach.study.RecessCell;
import eddyreach.study.SwitchDistance;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecessStateTest {

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

    private RecessState open(RecessInput study) throws IOException {
        return new RecessState(folder, study, () -> false);
    }

    @Test
    void whatIsKeptIsExactAndBelongsToOneStudy() throws IOException {
        RecessState state = open(study());
        assertThat(state.found()).isEqualTo(RecessState.Found.NOTHING);
        state.keep(CELL);
        state.save();
        RecessState again = open(study());
        assertThat(again.found()).isEqualTo(RecessState.Found.CELLS);
        assertThat(again.kept()).containsExactly(CELL);
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
        assertThat(open(other).found()).isEqualTo(RecessState.Found.OTHER_STUDY);
        assertThat(open(other).kept()).isEmpty();
        again.remove();
        assertThat(folder).isEmptyDirectory();
    }

    /** Cut off anywhere, or with any byte changed, it is not used. */
    @Test
    void aDamagedFileIsNotUsed() throws IOException {
        RecessInput study = study();
        RecessState state = open(study);
        state.keep(CELL);
        state.save();
        Path file = folder.resolve(RecessState.NAME);
        byte[] whole = Files.readAllBytes(file);
        for (int n = 0; n < whole.length; n += 7) {
            Files.writeString(file, new String(whole, 0, n, StandardCharsets.US_ASCII));
            assertThat(open(study).found()).as("first %d bytes", n).isEqualTo(RecessState.Found.DAMAGED);
            byte[] changed = whole.clone();
            changed[n] ^= 1;
            Files.write(file, changed);
            assertThat(open(study).kept()).as("byte %d", n).isEmpty();
            assertThat(open(study).found()).as("byte %d", n).isEqualTo(RecessState.Found.DAMAGED);
        }
    }
}
