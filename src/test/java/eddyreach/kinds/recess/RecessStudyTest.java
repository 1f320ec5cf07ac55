package eddyreach.kinds.recess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.mount.DimensionEffect;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountInput;
import eddyreach.kinds.mount.MountResult;
import eddyreach.kinds.mount.MountRunner;
import eddyreach.kinds.mount.SafeDimension;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecessStudyTest {

    @TempDir
    private Path folder;

    private <T> T read(Class<T> kind, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), text);
        return kind.cast(StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of(""))));
    }

    /**
     * The map gives for each recess what a study of that one mount gives, within its stated error; and a run that goes on with some of the
     * cells ends as one that was never stopped.
     */
    @Test
    void aCellIsWhatAStudyOfItsMountFindsAndGoingOnGivesTheSame() throws IOException {
        RecessInput study = SmallRecess.get().input();
        List<RecessCell> whole = SmallRecess.get().cells();
        RecessResult map = SmallRecess.get().result();
        assertThat(map.done()).isEqualTo(6);
        assertThat(map.partial()).isFalse();
        assertThat(cell(map, 0, 0).verdict()).isEqualTo(MountCase.Verdict.LATCHED);
        assertThat(map.panels().get(0).judged().orElseThrow().safe()).isTrue();
        MountResult mounts = MountRunner.run(read(MountInput.class, """
                eddyreach: study
                name: test
                kind: mount
                switch: m8-non-flush
                field pictures: no
                mounts:
                  - {name: a, wall: {material: fe360, thickness: 14 mm, hole: tapped, recess: {diameter: 25 mm, depth: 4.5 mm}}}
                """), m -> false, Progress.NONE);
        RecessCell cell = cell(map, 1, 1);
        MountCase c = mounts.cases().get(1);
        SwitchDistance d = c.targets().get(0).distance();
        assertThat(cell.verdict()).isEqualTo(c.verdict());
        assertThat(cell.used()).isCloseTo(c.reserve().used(), within(0.01));
        assertThat(d.outcome()).isEqualTo(SwitchDistance.Outcome.SWITCHES);
        assertThat(cell.distance().on())
                .isCloseTo(d.on(), within(cell.distance().onError() + d.onError()));
        coarseCellsLieWithinTheirBar(whole);

        SmallRecess.Recorder first = new SmallRecess.Recorder(List.of(), 3);
        RecessResult partial = RecessRunner.run(study, Progress.NONE, first);
        assertThat(partial.partial()).isTrue();
        assertThat(partial.done()).isBetween(3L, 5L);
        assertThat(partial.panels().get(0).judged()).isEmpty();
        SmallRecess.Recorder second = new SmallRecess.Recorder(first.cells(), Integer.MAX_VALUE);
        RecessResult again = RecessRunner.run(study, Progress.NONE, second);
        assertThat(again.panels().get(0).rows()).isEqualTo(map.panels().get(0).rows());
        assertThat(first.cells().size() + second.cells().size()).isEqualTo(whole.size());
    }

    /** The bar of cells that are computed coarsely only holds where they are computed finely too. */
    private static void coarseCellsLieWithinTheirBar(List<RecessCell> cells) {
        double share = cells.stream()
                .filter(c -> c.step() > 0)
                .mapToDouble(c -> c.distance().onError() / c.lever())
                .filter(Double::isFinite)
                .max()
                .orElseThrow();
        int compared = 0;
        for (RecessCell fine : cells) {
            RecessCell coarse = cells.stream()
                    .filter(c -> c.step() == 0 && c.diameter() == fine.diameter() && c.depth() == fine.depth())
                    .findFirst()
                    .orElseThrow();
            if (fine.step() > 0 && Double.isFinite(fine.lever())) {
                assertThat(coarse.distance().on()).isCloseTo(fine.distance().on(), within(share * coarse.lever()));
                compared++;
            }
        }
        assertThat(compared).isGreaterThanOrEqualTo(3);
    }

    private static RecessCell cell(double error, double lever) {
        return new RecessCell(
                0,
                0,
                0,
                1,
                0,
                MountCase.Verdict.RELEASED,
                new SwitchDistance(SwitchDistance.Outcome.SWITCHES, 5e-3, 5.3e-3, error, error),
                0,
                lever);
    }

    /**
     * Confirmed cells are off by 2 and 1 thousandths of the conductance, 4 um at a lever of 2 mm and 1 um at 1 mm: a cell whose distance moves by
     * 3 mm for all of the conductance carries 6 um, one that hardly moves the floor. A confirmed cell that never switches says nothing.
     */
    @Test
    void unconfirmedCellsCarryTheWorstErrorThatConfirmedOnesShow() {
        List<RecessCell> confirmed = List.of(cell(1e-6, 1e-3), cell(4e-6, 2e-3), cell(Double.NaN, Double.NaN));
        assertThat(RecessRunner.bar(cell(0, 3e-3), confirmed, 0.8e-6)).isCloseTo(6e-6, within(1e-15));
        assertThat(RecessRunner.bar(cell(0, 0.1e-3), confirmed, 0.8e-6)).isEqualTo(0.8e-6);
        assertThat(RecessRunner.bar(cell(0, 3e-3), List.of(), 0.8e-6)).isNaN();
    }

    private static RecessCell cell(RecessResult map, int diameter, int depth) {
        return map.panels().get(0).rows().get(depth).get(diameter).orElseThrow();
    }

    /** A non-flush switch level with steel is not safe; what is proposed is, and is so in a study of its own. */
    @Test
    void theNearestSafeDimensionsAreSafe() throws IOException {
        String study = """
                eddyreach: study
                name: test
                kind: mount
                switch: m8-non-flush
                field pictures: no
                mounts:
                  - {name: a, wall: {material: fe360, thickness: 14 mm%s}}
                """;
        MountCase found = MountRunner.run(read(MountInput.class, study.formatted("")), m -> false, Progress.NONE)
                .cases()
                .get(1);
        assertThat(found.safe()).isFalse();
        assertThat(found.proposals())
                .extracting(SafeDimension::kind)
                .containsExactly(SafeDimension.Kind.DIAMETER, SafeDimension.Kind.DEPTH);
        for (SafeDimension p : found.proposals()) {
            SafeDimension.Found f = p.found().orElseThrow();
            assertThat(f.value() / SafeDimension.STEP)
                    .isCloseTo(Math.rint(f.value() / SafeDimension.STEP), within(1e-6));
            // as asked of the join: 0.3 % of the change of impedance
            assertThat(f.direct().orElseThrow()).isLessThan(3e-3);
        }
        SafeDimension.Found wide = found.proposals().get(0).found().orElseThrow();
        MountCase there = MountRunner.run(
                        read(
                                MountInput.class,
                                study.formatted(", recess: {diameter: " + wide.value() * 1e3 + " mm, depth: "
                                        + found.proposals().get(0).depth() * 1e3 + " mm}")),
                        m -> false,
                        Progress.NONE)
                .cases()
                .get(1);
        assertThat(there.safe()).isTrue();
        assertThat(there.reserve().used()).isCloseTo(wide.used(), within(1e-3));
        assertThat(there.worst().used()).isCloseTo(wide.worst(), within(1e-3));
    }

    /** The slope of a dimension is what another mount really does. */
    @Test
    void theEffectOfADimension() throws IOException {
        String study = """
                eddyreach: study
                name: test
                kind: mount
                switch: m8-non-flush
                field pictures: no
                mounts:
                  - {name: a, wall: {material: fe360, thickness: 14 mm, recess: {diameter: 19 mm, depth: 5 mm}}}
                  - {name: b, wall: {material: fe360, thickness: 14 mm, recess: {diameter: 19 mm, depth: 5.3 mm}}}
                """;
        List<MountCase> cases = MountRunner.run(read(MountInput.class, study), m -> false, Progress.NONE)
                .cases();
        DimensionEffect depth = cases.get(1).effects().stream()
                .filter(e -> e.dimension() == DimensionEffect.Varied.RECESS_DEPTH)
                .findFirst()
                .orElseThrow();
        DimensionEffect other = cases.get(2).effects().stream()
                .filter(e -> e.dimension() == DimensionEffect.Varied.RECESS_DEPTH)
                .findFirst()
                .orElseThrow();
        double change = cases.get(2).targets().get(0).distance().on()
                - cases.get(1).targets().get(0).distance().on();
        double mean = (depth.slope() + other.slope()) / 2;
        // the curve bends; the mean of the slopes at both ends is good to a tenth
        assertThat(change / 0.3e-3).isCloseTo(mean, within(0.1 * Math.abs(mean)));
    }
}
