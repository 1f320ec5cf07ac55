package eddyreach.kinds.disturbance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Section;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.oscillator.AlternatingField;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DisturbanceStudyTest {

    private static final String STUDY = """
            eddyreach: study
            name: cable
            kind: disturbance
            switch: m18-non-flush-no-core
            field: {frequency: 50 Hz, current: 10 kA, distance: 50 mm}
            """;

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    /** Without a core the linkage by reciprocity is the area of the turns, in closed form; at 50 Hz the barrel does not shield. */
    @Test
    void aCoilWithoutACoreLinksTheAreaOfItsTurns() throws Exception {
        DisturbanceResult r = (DisturbanceResult) read(STUDY).run();
        Section s = r.model().winding().section();
        double area = AlternatingField.linkageOfAirCoil(r.model().winding().turns(), s.r0(), s.r1());
        assertThat(r.linkage()).isCloseTo(area, within(1e-3 * area));
        // mu0 I/(2 pi r), and the voltage w lambda B far below resonance
        assertThat(r.input().field().fluxDensity()).isCloseTo(0.04, within(1e-12));
        assertThat(r.free().voltage())
                .isCloseTo(
                        2 * Math.PI * 50 * area * 0.04, within(2e-3 * r.free().voltage()));
        assertThat(r.core()).isEmpty();
        assertThat(r.presentation().answer())
                .startsWith("No: a field of 40 mT at 50 Hz may change the output, since what it adds to the oscillation"
                        + " passes a threshold; up to 21.5 mT");
        for (Picture picture : r.presentation().pictures()) {
            assertThat(DrawnTexts.of(picture).faults()).as(picture.name()).isEmpty();
        }
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> read(STUDY.replace("50 Hz", "400 kHz").replace("50 mm", "0.1 mm") + "saturation: 9 T\n"));
        assertThat(ModelFiles.message(e, folder).lines())
                .hasSize(3)
                .anyMatch(l -> l.contains("field.frequency: 400 kHz is out of range, needs"))
                .anyMatch(l ->
                        l.contains("field.distance: 0.1 mm from so large a current gives 20 T, needs at most 10 T"))
                .anyMatch(l -> l.contains("saturation: 9 T is out of range, needs"));
    }
}
