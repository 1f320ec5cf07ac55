package eddyreach.kinds.principles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.kinds.principles.PrinciplesResult.Evaluated;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.studies.StudyReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrinciplesStudyTest {

    @TempDir
    private Path folder;

    /** What the trade says of each: loss puts resistive metals first, inductance puts all good conductors at one distance, the sum nearly all. */
    @Test
    void theShippedStudy() throws Exception {
        Library library = new Library(Path.of(""));
        PrinciplesResult r = (PrinciplesResult)
                StudyReader.read(library.studyFile("m18-principles"), library).run();
        List<Double> loss = r.of(Evaluated.LOSS).on();
        List<Double> inductance = r.of(Evaluated.INDUCTANCE).on();
        List<Double> sum = r.of(Evaluated.WEIGHTED_SUM).on();
        double sr = r.model().effectiveDistance();
        assertThat(loss.get(0)).isCloseTo(sr, within(1e-4 * sr));
        assertThat(sum.get(0)).isCloseTo(sr, within(1e-4 * sr));
        // by loss steel, stainless, brass, aluminium, copper in falling order; by inductance brass, aluminium and
        // copper within 1 %
        assertThat(loss.subList(0, 5)).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(inductance.get(4)).isCloseTo(inductance.get(2), within(0.01 * inductance.get(2)));
        assertThat(r.most(r.of(Evaluated.WEIGHTED_SUM)) - r.least(r.of(Evaluated.WEIGHTED_SUM)))
                .isLessThan(0.2 * (r.most(r.of(Evaluated.LOSS)) - r.least(r.of(Evaluated.LOSS))));
        // thin foil: farther than its plate by loss, nearer by inductance, and not with the others by the sum
        assertThat(loss.get(5)).isGreaterThan(2 * loss.get(3));
        assertThat(inductance.get(5)).isLessThan(inductance.get(3));
        assertThat(sum.get(5)).isGreaterThan(r.most(r.of(Evaluated.WEIGHTED_SUM)));
        assertThat(r.of(Evaluated.NON_FERROUS).on().get(0)).isZero();
        assertThat(r.presentation().answer()).startsWith("By loss 3.").contains("; a weighted sum of ");
        for (Picture picture : r.presentation().pictures()) {
            assertThat(DrawnTexts.of(picture).faults()).as(picture.name()).isEmpty();
        }
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> StudyReader.read(ModelFiles.write(folder, "s.yaml", """
                                eddyreach: study
                                name: x
                                kind: principles
                                switch: m18-flush
                                targets: [{name: a, material: zinc}]
                                alike: [b]
                                reference: fe360
                                """), new Library(Path.of(""))));
        assertThat(ModelFiles.message(e, folder).lines())
                .hasSize(2)
                .anyMatch(l -> l.contains("\"b\" is no target of this study, needs one of a"))
                .anyMatch(l -> l.contains("reference: mild steel Fe 360 is no non-ferrous metal"));
    }
}
