package eddyreach.kinds.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.engine.core.Warning;
import eddyreach.engine.mounted.DippedTarget;
import eddyreach.engine.mounted.MountedSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.kinds.background.BackgroundInput;
import eddyreach.kinds.background.BackgroundResult;
import eddyreach.kinds.background.BackgroundRunner;
import eddyreach.model.read.Library;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MountStudyTest {

    /** So wide that the metal does not matter. */
    private static final String WIDE =
            "{name: wide, sunk by: 3 mm, wall: {material: fe360, thickness: 26 mm, recess: {diameter: 120 mm, depth: 25 mm}}}";

    private final Library library = new Library(Path.of(""));

    @TempDir
    private Path folder;

    private MountResult shipped(String id) {
        MountInput study = (MountInput) StudyReader.read(library.studyFile(id), library);
        return MountRunner.run(study.withoutFieldPictures(), m -> false, Progress.NONE);
    }

    private MountResult run(String switchId, String mounts) throws IOException {
        return MountRunner.run(read(switchId, mounts, ""), m -> false, Progress.NONE);
    }

    private MountInput read(String switchId, String mounts, String more) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: test
                kind: mount
                switch: %s
                field pictures: no
                mounts: [%s]
                %s""".formatted(switchId, mounts, more));
        return (MountInput) StudyReader.read(new SourceFile.OnDisk(file), library);
    }

    /** What a study finds without corners, effects of dimensions and proposals. */
    private static MountProbe probe(MountInput study, ResolutionLadder ladder) {
        return new MountProbe(study, ladder, study.targets());
    }

    private static MountCase of(MountResult result, String id) {
        return result.cases().stream()
                .filter(c -> c.mount().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Common practice, and computed: flush switches bear steel beside them, not before them, and a recess helps. */
    @Test
    void aFlushSwitchInSteel() {
        MountResult result = shipped("m18-mount-steel");
        MountTarget level = of(result, "level").targets().get(0);
        MountTarget sunk = of(result, "sunk-4").targets().get(0);
        MountTarget recess = of(result, "steel-recess-36").targets().get(0);
        assertThat(level.within()).isTrue();
        assertThat(level.shift()).as("steel adds loss").isPositive();
        assertThat(sunk.shift()).isGreaterThan(2 * level.shift()).isGreaterThan(MountTarget.LARGEST_SHIFT);
        assertThat(Math.abs(recess.shift())).isLessThan(0.01);
        assertThat(of(result, "cover").verdict()).isEqualTo(MountCase.Verdict.LATCHED);
        assertThat(result.cases().get(0).reserve().used()).isZero();
        for (MountCase c : result.cases()) {
            assertThat(c.budget().total())
                    .isCloseTo(
                            c.undamped().resistance(),
                            within(1e-3 * c.undamped().resistance()));
            c.targets().forEach(t -> assertThat(t.distance().onError()).isNotNegative());
        }
        assertThat(result.rules()).extracting(UsualRule::kept).containsExactly(true, false, true, false);
        // the verdict decides, the rules are commented by it
        assertThat(result.rules())
                .extracting(UsualRule::grade)
                .containsExactly(Grade.OK, Grade.NOT_OK, Grade.OK, Grade.NOT_OK);
        result.cases()
                .forEach(c -> assertThat(c.judgement().grade() == Grade.NOT_OK)
                        .as(c.mount().id())
                        .isNotEqualTo(c.safe()));
        assertThat(of(result, "sunk-4").judgement().findings())
                .extracting(Judgement.Finding::cause)
                .containsExactly(Judgement.Cause.RESERVE_AT_WORST, Judgement.Cause.SHIFT);
        assertThat(MountWords.sentence(of(result, "sunk-4")))
                .startsWith("Not OK: uses 81 % of the reserve at -25 °C")
                .endsWith("at most 1.5 mm deep would do.");
        assertThat(of(result, "sunk-4").proposals().get(0).found().orElseThrow().value())
                .as("the thread must pass")
                .isGreaterThanOrEqualTo(20e-3);
        assertThat(TrialPlan.of(
                                result.cases().stream(),
                                result.cases().get(0).targets().get(0).distance())
                        .orElseThrow()
                        .mount()
                        .mount()
                        .id())
                .as("the most doubtful first")
                .isEqualTo("sunk-4");
    }

    @Test
    void aNonFlushSwitchInSteelLatchesUnlessItHasItsClearZone() {
        MountResult result = shipped("m18-non-flush-mount-steel");
        assertThat(of(result, "level").verdict()).isEqualTo(MountCase.Verdict.LATCHED);
        assertThat(of(result, "level").targets().get(0).distance().outcome())
                .isEqualTo(SwitchDistance.Outcome.NEVER_OFF);
        for (String id : List.of("proud-16", "clear-54")) {
            assertThat(of(result, id).verdict()).isEqualTo(MountCase.Verdict.RELEASED);
            assertThat(Math.abs(of(result, id).targets().get(0).shift())).isLessThan(0.02);
        }
    }

    /** What is drawn decides nothing: the curve may end before the switch-on distance. */
    @Test
    void theRangeDrawnDoesNotChangeTheVerdict() throws IOException {
        String mount = "{name: level, wall: {material: fe360, thickness: 9 mm, hole: tapped}}";
        MountCase wide = of(
                MountRunner.run(read("m8-flush", mount, "distances: {to: 3 mm}"), m -> false, Progress.NONE), "level");
        MountCase cut = of(
                MountRunner.run(
                        read("m8-flush", mount, "distances: {to: 0.5 mm, points: 11}"), m -> false, Progress.NONE),
                "level");
        assertThat(wide.targets().get(0).distance().on()).isGreaterThan(1e-3);
        assertThat(cut.targets().get(0).distance())
                .isEqualTo(wide.targets().get(0).distance());
        assertThat(cut.safe()).isEqualTo(wide.safe());
        double[] drawn = cut.targets().get(0).curve().distance();
        assertThat(drawn[drawn.length - 1]).isCloseTo(1.5e-3, within(0.51e-3));
    }

    @Test
    void aVeryWideRecessIsFreeAirAndSoIsAWallOfPlastic() throws IOException {
        MountInput study = read("m18-flush", WIDE + """
                ,
                {name: plastic, sunk by: 3 mm, wall: {material: plastic, thickness: 20 mm}, cover: {material: plastic, distance: 4 mm, thickness: 1 mm}}
                """, "");
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), List.of(study.standard()), Progress.NONE);
        MountProbe probe = probe(study, ladder);
        double free = ladder.step(ResolutionLadder.FIRST).solved().free().conductance();
        double on = probe.free().get(0).on();
        Mount wide = study.mounts().get(0);
        SolvedSwitch solved = probe.solved(wide, ResolutionLadder.FIRST);
        assertThat(solved.free().conductance() / free).isCloseTo(1, within(2e-3));
        MountProbe.Reading found = probe.fine(wide, probe.solved(wide, 0), solved);
        assertThat(found.sights().get(0).distance().on()).isCloseTo(on, within(2e-3 * on));
        // the mesh around a mount grows differently
        Mount plastic = study.mounts().get(1);
        assertThat(probe.solved(plastic, ResolutionLadder.FIRST).free().conductance() / free)
                .isCloseTo(1, within(1e-7));
        assertThat(plastic.floor(Mount.halfWidth(study.standard())))
                .as("it stops the target")
                .isEqualTo(5e-3);
    }

    /** The middle of what a wall without the edge and one that ends all round give, both inside the bar; verdicts take the worse. */
    @Test
    void aStraightEdge() throws IOException {
        String wall = "{name: %s, proud by: 3 mm, wall: {material: fe360, thickness: 3 mm%s}}";
        MountResult result = run(
                "m8-non-flush",
                wall.formatted("whole", "") + ", " + wall.formatted("round", ", diameter: 10 mm") + ", "
                        + wall.formatted("bracket", ", edge: 5 mm"));
        MountCase whole = of(result, "whole");
        MountCase round = of(result, "round");
        MountCase bracket = of(result, "bracket");
        SwitchDistance a = whole.targets().get(0).distance();
        SwitchDistance b = round.targets().get(0).distance();
        MountTarget t = bracket.targets().get(0);
        SwitchDistance d = t.distance();
        assertThat(a.on() - b.on()).as("they differ").isGreaterThan(2 * (a.onError() + b.onError()));
        assertThat(d.on() - d.onError()).isLessThanOrEqualTo(b.on() - b.onError());
        assertThat(d.on() + d.onError()).isGreaterThanOrEqualTo(a.on() + a.onError());
        assertThat(d.onError()).isCloseTo((a.on() - b.on()) / 2, within(a.onError() + b.onError()));
        assertThat(t.shift() + t.spread()).isCloseTo(whole.targets().get(0).shift(), within(1e-12));
        assertThat(t.within()).isTrue();
        assertThat(new MountTarget(t.target(), 0, t.curve(), d, d, 0.09, 0.02, 0.02, Optional.empty()).within())
                .as("the worse bound counts")
                .isFalse();
        assertThat(bracket.reserve().used() + bracket.reserve().spread())
                .isCloseTo(whole.reserve().used(), within(1e-12));
        assertThat(bracket.worst().used()).isEqualTo(whole.worst().used());
        assertThat(bracket.undamped().conductance())
                .isBetween(round.undamped().conductance(), whole.undamped().conductance());
        assertThat(bracket.warnings()).extracting(Warning::kind).contains(Warning.Kind.STRAIGHT_EDGE);
        // the edge moves the round bound only, and by half
        DimensionEffect edge = bracket.effects().stream()
                .filter(e -> e.dimension() == DimensionEffect.Varied.EDGE)
                .findFirst()
                .orElseThrow();
        assertThat(edge.slope()).as("farther away there is more steel").isPositive();
        assertThat(edge.slope() * 1e-3).as("of no more than is missing").isLessThan(a.on() - b.on());
    }

    /** A slug that dips into a recess: the direct solve below the wall's level goes over into the joined path above it. */
    @Test
    void directAndJoinedMeetAtTheWallsLevel() throws IOException {
        MountInput study = read(
                "m18-flush",
                "{name: deep, sunk by: 4 mm, wall: {material: aluminium, thickness: 20 mm, recess: {diameter: 24 mm, depth: 8 mm}}}",
                "targets: [{name: slug, material: fe360, thickness: 3 mm, shape: disc, diameter: 9 mm}]\n");
        Target slug = study.targets().get(0);
        Mount mount = study.mounts().get(0);
        assertThat(mount.floor(Mount.halfWidth(slug))).isZero();
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), List.of(slug, study.standard()), Progress.NONE);
        MountProbe probe = probe(study, ladder);
        SolvedSwitch solved = probe.solved(mount, ResolutionLadder.FIRST);
        double on = probe.fine(mount, probe.solved(mount, 0), solved)
                .sights()
                .get(0)
                .distance()
                .on();
        assertThat(on).as("inside the recess").isBetween(0.5e-3, 4e-3);
        double omega = solved.free().omega();
        DippedTarget dipped =
                new DippedTarget(solved, List.of(), slug.parts(), Optional.empty(), 0, solved.plane() + 2e-3);
        var field = solved.target(slug);
        for (double g : new double[] {solved.plane(), solved.plane() + 0.7e-3, solved.plane() + 1.7e-3}) {
            var joined = solved.change(field, omega, g);
            assertThat(dipped.change(omega, g).subtract(joined).abs())
                    .as("at %s m, interpolation error %s", g, dipped.error(omega, g))
                    .isLessThan(3e-3 * joined.abs());
        }
    }

    /**
     * A ball below the level of a wall is made of discs. Where the wall is too far away to matter the exact ball in free air tells what is
     * right, all the way down to the face: the stated error holds it, and at the wall's level both are one.
     */
    @Test
    void aBallInAWideRecessIsTheExactOneOfFreeAir() throws IOException {
        MountInput study = read("m18-flush", WIDE.replace("120 mm", "80 mm"), """
                targets:
                  - {name: steel, material: fe360, shape: sphere, diameter: 9 mm}
                  - {name: copper, material: copper, shape: sphere, diameter: 9 mm}
                  - {name: stainless, material: stainless-304, shape: sphere, diameter: 9 mm}
                """);
        SolvedSwitch free =
                new SolvedSwitch(study.switchModel(), Resolution.FINE.withoutFields(), study.targets(), bytes -> {});
        SolvedSwitch solved =
                free.in(study.mounts().get(0).parts(study.switchModel().coreRadius()), bytes -> {});
        assertThat(solved.plane()).isEqualTo(3e-3);
        study.targets().forEach(ball -> assertTheExactBall(free, solved, ball));
    }

    private static void assertTheExactBall(SolvedSwitch free, SolvedSwitch solved, Target ball) {
        MountedSwitch mounted = new MountedSwitch(solved, ball, Optional.empty(), 0);
        var exactly = free.target(ball);
        for (double g : new double[] {0.1e-3, 1e-3, 2e-3, 2.9e-3, 3e-3}) {
            TankState found = mounted.state(g);
            Complex exact = free.change(exactly, found.omega(), g);
            Complex bar = mounted.stairs(found.omega(), g);
            Complex off = found.change().subtract(exact);
            // the wall, however far, and the other mesh take a share too
            double other = mounted.interpolation(found.omega(), g) + 2e-3 * exact.abs();
            assertThat(Math.abs(off.getReal()))
                    .as("%s at %s m, of %s", ball.id(), g, exact)
                    .isLessThan(bar.getReal() + other);
            assertThat(Math.abs(off.getImaginary()))
                    .as("%s at %s m, of %s", ball.id(), g, exact)
                    .isLessThan(bar.getImaginary() + other);
            assertThat(bar.abs()).as("of use").isLessThan(0.06 * exact.abs());
        }
    }

    @Test
    void aBackgroundBehindTheTarget() {
        BackgroundInput study = (BackgroundInput) StudyReader.read(library.studyFile("m18-background"), library);
        BackgroundResult result = BackgroundRunner.run(study, Progress.NONE);
        double[] d = result.distance();
        int last = d.length - 1;
        assertThat(result.alone().off()).isGreaterThan(result.alone().on());
        for (BackgroundResult.Series s : result.targets()) {
            assertThat(s.behind().get(last).on())
                    .as("far away it does nothing")
                    .isCloseTo(s.free().on(), within(5e-3 * s.free().on()));
            assertThat(s.hundredth()).isGreaterThan(s.tenth());
            assertThat(s.tenth())
                    .as("below it, it latches the switch")
                    .isGreaterThan(result.alone().off());
            assertThat(s.tenth()).as("the usual rule is careful here").isLessThan(result.usualFront());
        }
        assertThat(result.targets().get(1).tenth())
                .as("a small target leaves more of the field to the background")
                .isGreaterThan(result.targets().get(0).tenth());
        for (int i = 1; i <= last; i++) {
            assertThat(result.reserve()[i]).isLessThan(result.reserve()[i - 1]);
        }
    }
}
