package eddyreach.kinds.offaxis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import eddyreach.study.OffsetRange;
import eddyreach.study.StudyInput;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OffAxisReaderTest {

    private static final String ZONE = """
            eddyreach: study
            name: x
            kind: zone
            switch: m18-flush
            targets:
              - {name: a, material: fe360, shape: disc, diameter: 10 mm, thickness: 1 mm}
            """;

    private static final String PASS = ZONE.replace("kind: zone", "kind: pass") + "distance: 2.5 mm\n";

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(folder));
    }

    private String failure(String text) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(text));
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    @Test
    void aZoneReachesALittleBeyondTheEdgesUnlessTold() {
        ZoneInput zone = (ZoneInput) read(ZONE);
        assertThat(zone.offsets().last()).isCloseTo(1.15 * (9e-3 + 5e-3), within(1e-9));
        assertThat(zone.offsets().at(0)).isZero();
        assertThat(zone.offsets().at(zone.offsets().points() - 1))
                .isEqualTo(zone.offsets().last());
        assertThat(zone.lastDistance()).isCloseTo(12.5e-3, within(1e-12));
        ZoneInput told = (ZoneInput) read(ZONE + "offsets: {to: 20 mm, points: 21}\nreach: 8 mm\n");
        assertThat(told.offsets()).isEqualTo(new OffsetRange(20e-3, 21));
        assertThat(told.lastDistance()).isEqualTo(8e-3);
    }

    @Test
    void aPassNeedsItsDistance() {
        assertThat(((PassInput) read(PASS)).distance()).isEqualTo(2.5e-3);
        assertThat(failure(PASS.replace("distance: 2.5 mm\n", ""))).contains("distance: missing, needs a length");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        assertThat(failure(ZONE + "offsets: {to: 0 mm, points: 3}\nreach: -1 mm\ndistance: 2 mm\n")
                        .lines())
                .hasSize(4)
                .anyMatch(l -> l.contains("offsets.to: 0 mm is out of range"))
                .anyMatch(l -> l.contains("offsets.points: got 3, needs"))
                .anyMatch(l -> l.contains("reach: -1 mm is out of range"))
                .anyMatch(l -> l.contains("distance: unknown key"));
    }
}
