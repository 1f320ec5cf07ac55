package eddyreach.kinds.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.SwitchDistance.Outcome;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.kinds.mount.DimensionEffect.Varied;
import eddyreach.kinds.mount.Judgement.Cause;
import eddyreach.kinds.mount.MountCase.Verdict;
import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.switching.Trim;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Verdicts, trials and rules, on mounts of which only what they look at is given. */
class JudgementTest {

    private static final double NONE = Double.NaN;
    private static final Material STEEL = new Material("steel", "steel", 5e6, 5e-3, 200, 0, "made up");
    private static final Material PLASTIC = new Material("plastic", "plastic", 0, 0, 1, 0, "made up");
    private static final SwitchDistance NEVER = new SwitchDistance(Outcome.NEVER_ON, NONE, NONE, NONE, NONE);
    private static final SwitchDistance SEEN = new SwitchDistance(Outcome.SWITCHES, 5e-3, 5.5e-3, 1e-5, 1e-5);
    private static final SwitchDistance HELD = new SwitchDistance(Outcome.NEVER_OFF, 5e-3, NONE, 1e-5, NONE);
    private static final Library LIBRARY = new Library(Path.of(""));

    private static MountTarget target(
            String id,
            double floor,
            SwitchDistance here,
            SwitchDistance free,
            double shift,
            double error,
            double spread) {
        return new MountTarget(
                new Target(id, id, new Body.Ball(1e-2, STEEL)),
                floor,
                null,
                here,
                free,
                shift,
                error,
                spread,
                Optional.empty());
    }

    private static MountTarget shifted(double shift) {
        return target("t", 0, SEEN, SEEN, shift, 0.005, 0);
    }

    private static MountCase mount(
            Mount mount,
            List<Part> parts,
            Verdict verdict,
            double used,
            double worst,
            Verdict corner,
            List<DimensionEffect> effects,
            MountTarget... targets) {
        return new MountCase(
                mount,
                parts,
                null,
                new MountCase.Reserve(1, used, 0.01, 0.02),
                List.of(
                        new MountCase.Corner(23, 1, used, Verdict.RELEASED, used, Verdict.RELEASED),
                        new MountCase.Corner(70, 1.1, worst, corner, worst, corner)),
                verdict,
                List.of(targets),
                null,
                0,
                List.of(),
                effects,
                List.of());
    }

    private static MountCase free(Verdict verdict, double used, double worst, Verdict corner, MountTarget... targets) {
        return mount(Mount.freeAir(), List.of(), verdict, used, worst, corner, List.of(), targets);
    }

    private static MountCase released(MountTarget... targets) {
        return free(Verdict.RELEASED, 0.1, 0.2, Verdict.RELEASED, targets);
    }

    @ParameterizedTest
    @CsvSource({
        "RELEASED, 0.1, 0.2, RELEASED, OK, ",
        "RELEASED, 0.48, 0.5, RELEASED, OK, ",
        "RELEASED, 0.1, 0.51, RELEASED, CARE, RESERVE_AT_WORST",
        "RELEASED, 0.1, 0.7, RELEASED, CARE, RESERVE_AT_WORST",
        "RELEASED, 0.1, 0.71, RELEASED, NOT_OK, RESERVE_AT_WORST",
        "RELEASED, 0.49, 0.6, RELEASED, NOT_OK, RESERVE",
        "RELEASED, 0.1, 0.9, HOLDS, NOT_OK, HOLDS_IN_A_CORNER",
        "HOLDS, 0.9, 0.95, HOLDS, NOT_OK, HOLDS",
        "LATCHED, 1.1, 1.2, LATCHED, NOT_OK, LATCHED"
    })
    void withoutATarget(Verdict verdict, double used, double worst, Verdict corner, Grade grade, Cause cause) {
        MountCase c = free(verdict, used, worst, corner);
        assertThat(c.judgement().grade()).isEqualTo(grade);
        assertThat(c.judgement().findings())
                .extracting(Judgement.Finding::cause)
                .isEqualTo(cause == null ? List.of() : List.of(cause));
        assertThat(c.safe())
                .isEqualTo(verdict == Verdict.RELEASED
                        && corner == Verdict.RELEASED
                        && used + 0.02 <= 0.5
                        && worst <= 0.7);
    }

    @Test
    void whatTheTargetsSay() {
        assertThat(cause(shifted(0.05))).isEmpty();
        assertThat(cause(shifted(-0.1))).as("its bar reaches beyond a tenth").contains(Cause.SHIFT);
        assertThat(released(shifted(0.097)).judgement().grade()).isEqualTo(Grade.CARE);
        assertThat(released(shifted(0.095)).judgement().grade()).isEqualTo(Grade.OK);
        assertThat(released(shifted(0.11)).judgement().grade()).isEqualTo(Grade.NOT_OK);
        assertThat(released(shifted(-0.11)).judgement().grade()).isEqualTo(Grade.NOT_OK);
        assertThat(released(target("t", 0, SEEN, SEEN, 0.09, 0, 0.02))
                        .judgement()
                        .grade())
                .as("the edge counts")
                .isEqualTo(Grade.NOT_OK);
        assertThat(cause(target("t", 0, NEVER, NEVER, NONE, NONE, 0))).contains(Cause.NEVER_DETECTED);
        assertThat(cause(target("t", 1e-3, NEVER, SEEN, NONE, NONE, 0))).contains(Cause.STOPPED);
        assertThat(cause(target("t", 0, NEVER, SEEN, NONE, NONE, 0))).contains(Cause.LOST);
        assertThat(cause(target("t", 0, HELD, SEEN, NONE, NONE, 0))).contains(Cause.NOT_RELEASED);
        assertThat(free(Verdict.HOLDS, 0.9, 0.9, Verdict.HOLDS, target("t", 0, HELD, SEEN, NONE, NONE, 0))
                        .judgement()
                        .findings())
                .extracting(Judgement.Finding::cause)
                .as("the mount itself holds it")
                .containsExactly(Cause.HOLDS);
    }

    private static Optional<Cause> cause(MountTarget t) {
        return released(t).judgement().findings().stream()
                .map(Judgement.Finding::cause)
                .findFirst();
    }

    @Test
    void theWorstComesFirst() {
        Judgement j = free(
                        Verdict.RELEASED,
                        0.1,
                        0.6,
                        Verdict.RELEASED,
                        target("near", 0, NEVER, NEVER, NONE, NONE, 0),
                        target("lost", 0, NEVER, SEEN, NONE, NONE, 0))
                .judgement();
        assertThat(j.grade()).isEqualTo(Grade.NOT_OK);
        assertThat(j.findings().get(0)).isEqualTo(new Judgement.Finding(Cause.LOST, Grade.NOT_OK, "lost", NONE));
        assertThat(j.findings()).hasSize(3);
    }

    @Test
    void targetsInAMount() {
        assertThat(target("t", 0, NEVER, NEVER, NONE, NONE, 0).within()).isTrue();
        assertThat(target("t", 0, NEVER, SEEN, NONE, NONE, 0).within()).isFalse();
        assertThat(target("t", 0, NEVER, SEEN, NONE, NONE, 0).keptAway()).isFalse();
        assertThat(target("t", 1e-3, NEVER, NEVER, NONE, NONE, 0).keptAway()).isFalse();
        assertThat(target("t", 1e-3, SEEN, SEEN, 0, 0, 0).keptAway()).isFalse();
        assertThat(target("t", 0, SEEN, SEEN, 0, 0, 0).travel()).isCloseTo(0.5e-3, within(1e-15));
    }

    @Test
    void theOutputWithoutATarget() {
        Trim trim = new Trim(2e-4, 1.8e-4);
        assertThat(Verdict.of(2e-4, trim)).isEqualTo(Verdict.LATCHED);
        assertThat(Verdict.of(1.9e-4, trim)).isEqualTo(Verdict.HOLDS);
        assertThat(Verdict.of(1.8e-4, trim)).isEqualTo(Verdict.HOLDS);
        assertThat(Verdict.of(1.79e-4, trim)).isEqualTo(Verdict.RELEASED);
    }

    private static Mount walled(String id) {
        Mount.Wall wall =
                new Mount.Wall(STEEL, 9e-3, Double.POSITIVE_INFINITY, 20e-3, List.of(), Double.POSITIVE_INFINITY);
        return new Mount(id, id, "", 0, Optional.of(wall), Optional.empty(), List.of(), Optional.empty());
    }

    private static MountCase wall(String id, Verdict verdict, double worst, DimensionEffect... effects) {
        return mount(walled(id), List.of(), verdict, 0.1, worst, Verdict.RELEASED, List.of(effects), shifted(0));
    }

    @Test
    void theMostDoubtfulWallIsTriedFirst() {
        TrialPlan plan = TrialPlan.of(
                        Stream.of(
                                released(shifted(0)),
                                wall("easy", Verdict.RELEASED, 0.2),
                                wall(
                                        "doubtful",
                                        Verdict.RELEASED,
                                        0.4,
                                        new DimensionEffect(Varied.BORE, 0, 20e-3, 9, 0),
                                        new DimensionEffect(Varied.SUNK, 0, 1e-3, -0.5, 0),
                                        new DimensionEffect(Varied.RECESS_DEPTH, 1, 2e-3, 0.2, 0)),
                                wall("latched", Verdict.LATCHED, 2),
                                wall("bad", Verdict.RELEASED, 0.3)),
                        SEEN)
                .orElseThrow();
        assertThat(plan.mount().mount().id()).isEqualTo("doubtful");
        assertThat(plan.others()).extracting(c -> c.mount().id()).containsExactly("bad", "easy");
        assertThat(plan.shim().orElseThrow().dimension()).as("along the axis").isEqualTo(Varied.SUNK);
        assertThat(plan.shim().orElseThrow().label()).isEqualTo("sunk by");
        assertThat(new DimensionEffect(Varied.RECESS_DEPTH, 2, 0, 0, 0).label()).isEqualTo("recess depth, step 2");
        assertThat(TrialPlan.of(Stream.of(released(shifted(0))), SEEN)).isEmpty();
    }

    private static UsualRule rule(String model, Mount mount, Part... parts) {
        SwitchModel m = LIBRARY.switchModel(model);
        return UsualRules.of(
                        m,
                        List.of(mount(
                                mount,
                                List.of(parts),
                                Verdict.RELEASED,
                                0.1,
                                0.2,
                                Verdict.RELEASED,
                                List.of(),
                                shifted(0))))
                .get(0);
    }

    private static Part ring(Material material, double r0, double z0, double z1) {
        return new Part("p", Role.MOUNT, new Section(r0 * 1e-3, 90e-3, z0 * 1e-3, z1 * 1e-3), material);
    }

    /** The face of the M18 measures 18 mm: a wide opening 36 mm, a clear zone 54 mm and 16 mm long with s_n of 8 mm. */
    @Test
    void rulesOfTheTrade() {
        UsualRule level = rule("m18-flush", walled("w"), ring(STEEL, 10, -9, 0));
        assertThat(level.kind()).isEqualTo(UsualRule.Kind.FLUSH_LEVEL);
        assertThat(level.kept()).isTrue();
        assertThat(level.width()).isCloseTo(2 * LIBRARY.switchModel("m18-flush").faceDiameter(), within(1e-15));
        assertThat(rule("m18-flush", walled("w"), ring(STEEL, 10, -9, 1)).kept())
                .isFalse();
        assertThat(rule("m18-flush", walled("w"), ring(STEEL, 18.1, -9, 1)).kept())
                .isTrue();
        assertThat(rule("m18-flush", walled("w"), ring(PLASTIC, 10, -9, 1)).kept())
                .as("no metal")
                .isTrue();
        UsualRule around = rule("m18-non-flush", walled("w"), ring(STEEL, 10, -20, -16));
        assertThat(around.kind()).isEqualTo(UsualRule.Kind.CLEAR_AROUND);
        assertThat(around.length()).isCloseTo(16e-3, within(1e-12));
        assertThat(around.kept()).isTrue();
        assertThat(rule("m18-non-flush", walled("w"), ring(STEEL, 10, -20, -15.9))
                        .kept())
                .isFalse();
        assertThat(rule("m18-non-flush", walled("w"), ring(STEEL, 27.1, -20, 0)).kept())
                .isTrue();
        assertThat(UsualRules.of(LIBRARY.switchModel("m18-flush"), List.of(released(shifted(0)))))
                .as("nothing around it")
                .isEmpty();
    }

    @Test
    void metalInFrontOfTheFace() {
        Mount.Cover cover = new Mount.Cover(STEEL, 1e-3, 1e-3, Double.POSITIVE_INFINITY);
        Mount covered = new Mount("c", "c", "", 0, Optional.empty(), Optional.of(cover), List.of(), Optional.empty());
        UsualRule front = rule("m18-flush", covered, ring(STEEL, 0, 15, 16));
        assertThat(front.kind()).isEqualTo(UsualRule.Kind.CLEAR_IN_FRONT);
        assertThat(front.length()).as("three rated distances").isCloseTo(15e-3, within(1e-12));
        assertThat(front.kept()).isTrue();
        assertThat(rule("m18-flush", covered, ring(STEEL, 0, 14.9, 16)).kept()).isFalse();
        assertThat(rule("m18-flush", covered, ring(STEEL, 9.1, 1, 2)).kept())
                .as("beside the face")
                .isTrue();
        assertThat(rule("m18-flush", covered, ring(STEEL, 0, -2, 0)).kept())
                .as("behind it")
                .isTrue();
        assertThat(rule("m18-flush", behind(15)).kept()).isTrue();
        assertThat(rule("m18-flush", behind(14.9)).kept()).isFalse();
    }

    private static Mount behind(double distance) {
        Mount.Background plate = new Mount.Background(STEEL, 2e-3, Double.POSITIVE_INFINITY);
        return new Mount(
                "b",
                "b",
                "",
                0,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(new Mount.Standing(plate, distance * 1e-3)));
    }
}
