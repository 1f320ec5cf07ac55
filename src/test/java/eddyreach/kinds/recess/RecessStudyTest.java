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
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
                """), Progress.NONE);
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

    /**
     * Cells that were computed coarsely alone: their bar holds what a study of that mount finds at the fine step, and is no smaller than that of
     * a confirmed cell whose distance follows the conductance less.
     */
    @Test
    void barsOfUnconfirmedCellsHoldTheirFineValue() throws IOException {
        RecessInput study = read(RecessInput.class, """
                eddyreach: study
                name: a recess
                kind: recess
                switch: m8-non-flush
                wall: {materials: [fe360], thickness: 14 mm}
                diameters: {from: 11 mm, to: 27 mm, points: 5}
                depths: {from: 2 mm, to: 8 mm, points: 4}
                recess: {diameter: 26 mm, depth: 8 mm}
                """);
        RecessResult map =
                RecessRunner.run(study, Progress.NONE, new SmallRecess.Recorder(List.of(), Integer.MAX_VALUE));
        List<RecessCell> coarse = map.panels().get(0).rows().stream()
                .flatMap(List::stream)
                .map(Optional::orElseThrow)
                .filter(c -> c.step() == 0 && Double.isFinite(c.lever()))
                .sorted(Comparator.comparingDouble(RecessCell::lever).reversed())
                .limit(3)
                .toList();
        assertThat(coarse).isNotEmpty();
        List<RecessCell> fineCells = map.panels().get(0).rows().stream()
                .flatMap(List::stream)
                .map(Optional::orElseThrow)
                .filter(c -> c.step() > 0 && Double.isFinite(c.lever()))
                .toList();
        int compared = 0;
        for (RecessCell c : coarse) {
            for (RecessCell f : fineCells) {
                if (f.lever() <= c.lever()) {
                    assertThat(c.distance().onError())
                            .isGreaterThanOrEqualTo(f.distance().onError());
                    compared++;
                }
            }
        }
        assertThat(compared).isPositive();
        for (RecessCell c : coarse.subList(0, 1)) {
            double diameter = 11 + 4 * c.diameter();
            double depth = 2 + 2 * c.depth();
            SwitchDistance fine = MountRunner.run(read(MountInput.class, """
                    eddyreach: study
                    name: test
                    kind: mount
                    switch: m8-non-flush
                    field pictures: no
                    mounts:
                      - {name: a, wall: {material: fe360, thickness: 14 mm, recess: {diameter: %s mm, depth: %s mm}}}
                    """.formatted(diameter, depth)), Progress.NONE)
                    .cases()
                    .get(1)
                    .targets()
                    .get(0)
                    .distance();
            double off = Math.abs(c.distance().on() - fine.on());
            assertThat(off).isLessThanOrEqualTo(c.distance().onError() + fine.onError());
        }
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
        MountCase found = MountRunner.run(read(MountInput.class, study.formatted("")), Progress.NONE)
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
        List<MountCase> cases =
                MountRunner.run(read(MountInput.class, study), Progress.NONE).cases();
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
