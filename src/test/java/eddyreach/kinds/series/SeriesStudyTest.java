package eddyreach.kinds.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyInput;
import java.nio.file.Path;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SeriesStudyTest {

    private static final String STUDY = """
            eddyreach: study
            name: many
            kind: series
            switch: m18-flush
            units: 4000
            """;

    @TempDir
    private Path folder;

    private StudyInput read(String text) {
        return StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    /**
     * Before the standard target a unit is on where it is trimmed: 5 mm (1 + e), moved by the mounting. Even deviations of 0.25 and 0.1 mm have variances as the
     * squares, so that shares and quantiles follow by hand.
     */
    @Test
    void trimAndMountingFollowByHand() throws Exception {
        SeriesResult r = (SeriesResult) read(STUDY + "distribution: even\ntolerances: {trim: 5 %, mounting: 0.1 mm}\n")
                .run();
        double trim = 0.25 * 0.25 / (0.25 * 0.25 + 0.1 * 0.1);
        // the error of a share is about sqrt(2 bins)/n + 2 sqrt(share/n), see Spread
        assertThat(r.shares().get(0).factor()).isEqualTo(Factor.TRIM);
        assertThat(r.shares().get(0).share()).isCloseTo(trim, within(0.035));
        assertThat(r.shares().get(1).share()).isCloseTo(1 - trim, within(0.02));
        assertThat(r.effectiveInside()).isEqualTo(1);
        double deviation = Math.sqrt((0.25 * 0.25 + 0.1 * 0.1) / 3) * 1e-3;
        assertThat(r.on().deviation()).isCloseTo(deviation, within(0.04 * deviation));
        // 0.3 % of a trapezium of half widths 0.35 and 0.15 mm: its flank reaches 0.35 - sqrt(2 * 0.003 * 0.5 * 0.2) mm
        double edge = 5e-3 - (0.35 - Math.sqrt(2 * 0.003 * 0.5 * 0.2)) * 1e-3;
        assertThat(r.assuredOn().value()).isCloseTo(edge, within(0.01e-3));
        assertThat(r.assuredOff().value()).isGreaterThan(5.25e-3);
        assertThat(r.worst().assuredOn()).isLessThan(r.assuredOn().value());
        assertThat(r.check().worst()).isLessThan(2e-6);
        assertThat(r.presentation().answer())
                .startsWith("99.7 % of 4 000 units are on up to 4.67 mm")
                .contains("; trim matters most, with 8");
        for (Picture picture : r.presentation().pictures()) {
            assertThat(DrawnTexts.of(picture).faults()).as(picture.name()).isEmpty();
        }
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        InputException e = catchThrowableOfType(
                InputException.class,
                () -> read(
                        STUDY.replace("units: 4000", "units: 99") + "share: 30 %\ntrimmed: no\n"
                                + "tolerances: {trim: 3 %, cap thickness: 1 mm, temperature: {from: 70 degC, to: -25 degC}}\n"));
        assertThat(ModelFiles.message(e, folder).lines())
                .anyMatch(l -> l.contains("units: got 99, needs a whole number from 100 to 1000000"))
                .anyMatch(l -> l.contains("share: 30 % is out of range, needs 50 % to 99.999 %"))
                .anyMatch(l -> l.contains("tolerances.trim: belongs to trimmed: yes"))
                .anyMatch(l ->
                        l.contains("tolerances.cap thickness: 1 mm would push parts into each other, needs at most"))
                .anyMatch(l -> l.contains("tolerances.temperature.to: must be above from"));
        assertThat(ModelFiles.message(
                        catchThrowableOfType(InputException.class, () -> read(STUDY + "tolerances: {trim: 0 %}\n")),
                        folder))
                .contains("at least one tolerance must be above 0");
    }

    /** The shipped series on one thread and on three, with the units computed directly beside it. */
    @Test
    @Tag("long")
    void theSameOnAnyNumberOfThreads() throws Exception {
        Library library = new Library(Path.of(""));
        StudyInput study = StudyReader.read(library.studyFile("m18-series-foil"), library);
        SeriesResult one =
                (SeriesResult) new ForkJoinPool(1).submit(() -> study.run()).get();
        SeriesResult three =
                (SeriesResult) new ForkJoinPool(3).submit(() -> study.run()).get();
        for (double q : new double[] {0.0015, 0.1, 0.5, 0.9, 0.9985}) {
            assertThat(one.on().quantile(q)).isEqualTo(three.on().quantile(q));
            assertThat(one.off().quantile(q)).isEqualTo(three.off().quantile(q));
        }
        assertThat(one.check().worst()).isLessThan(5e-6);
        // untrimmed units differ by what the trim takes away
        double sum =
                one.shares().stream().mapToDouble(SeriesResult.Share::share).sum();
        assertThat(sum).isBetween(0.9, 1.02);
    }
}
