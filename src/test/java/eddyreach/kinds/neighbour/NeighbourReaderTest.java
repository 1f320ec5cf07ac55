package eddyreach.kinds.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NeighbourReaderTest {

    private final Library library = new Library(Path.of(""));

    @TempDir
    private Path folder;

    private NeighbourInput read(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: test
                kind: neighbour
                switch: m18-flush
                """ + text.replace("; ", "\n") + "\n");
        return (NeighbourInput) StudyReader.read(new SourceFile.OnDisk(file), library);
    }

    @Test
    void whatIsNotSaidIsUsual() throws IOException {
        NeighbourInput study = read("arrangement: side by side");
        assertThat(study.other()).isEqualTo(study.switchModel());
        assertThat(study.targets()).containsExactly(study.standard());
        assertThat(study.spacings().first()).isEqualTo(18e-3);
        assertThat(read("arrangement: face to face").spacings().first())
                .isEqualTo(1.1 * study.switchModel().ratedDistance()
                        + study.standard().thickness());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "other: m12-flush | arrangement: missing",
                "arrangement: back to back | got \"back to back\", needs face to face or side by side",
                "arrangement: side by side; other: m99 | other:",
                "arrangement: side by side; spacings: {from: 15 mm} | the axes of two bodies of 36 mm together are at least 18 mm apart",
                "arrangement: face to face; spacings: {from: 20 mm, to: 10 mm} | 10 mm must be larger than from, 20 mm",
                "arrangement: face to face; alternative frequency: 1.05 | is 5.0 % away, and two tolerances of 5.0 % bridge that",
                "arrangement: face to face; targets: [{name: b, shape: sphere, diameter: 9 mm, material: fe360}] | is a ball",
                "arrangement: face to face; targets: [{name: b, shape: plate, thickness: 1 mm, material: fe360}] | measures endlessly across; between two switches face to face at most 84.3 mm",
                "arrangement: face to face; demodulator: 5 mm | demodulator: "
            })
    void badInput(String text, String message) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(InputException.class).hasMessageContaining(message);
    }

    @Test
    void allThatIsWrongIsToldAtOnce() {
        assertThatThrownBy(() -> read("arrangement: side by side; tolerance: 50 %; other: m99; spacings: {points: 3}"))
                .hasMessageContaining("tolerance")
                .hasMessageContaining("other")
                .hasMessageContaining("spacings");
    }
}
