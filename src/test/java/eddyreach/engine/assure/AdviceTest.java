package eddyreach.engine.assure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.kinds.approach.PartQuestion;
import eddyreach.model.read.Library;
import eddyreach.model.values.SwitchModel;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What to change, and why, from computed variants. */
class AdviceTest {

    private static final Library LIBRARY = new Library(Path.of(""));

    private static TargetResult part(String switchId, Map<String, String> words) {
        return ApproachRunner.run(PartQuestion.read("question", switchId, Optional.empty(), words, List.of(), LIBRARY)
                        .withoutFieldPictures())
                .targets()
                .get(1);
    }

    private static double on(Advice advice, Change.Kind kind) {
        return advice.changes().stream()
                .filter(c -> c.kind() == kind)
                .findFirst()
                .orElseThrow()
                .on();
    }

    @Test
    void aluminiumIsHelpedBySteelFoilAndLargerSwitches() {
        SwitchModel model = LIBRARY.switchModel("m18-flush");
        TargetResult part = part("m18-flush", Map.of("material", "aluminium", "thickness", "1 mm"));
        Advice advice = part.assessment().orElseThrow().advice().orElseThrow();
        assertThat(advice.needed()).isTrue();
        assertThat(advice.otherPrinciple()).isTrue();
        assertThat(advice.changes())
                .isSortedAccordingTo(Comparator.comparingDouble(Change::gain).reversed())
                .allSatisfy(c -> assertThat(c.gain())
                        .isCloseTo(c.on() - part.distance().on(), within(1e-12))
                        .isGreaterThanOrEqualTo(Advice.WORTH * model.ratedDistance()));
        // the same outline in steel is the standard target itself
        assertThat(on(advice, Change.Kind.STEEL_FLAG)).isCloseTo(model.effectiveDistance(), within(0.05e-3));
        // a millimetre of metal is a part, not a foil: nobody makes it thinner by a factor of a hundred
        assertThat(advice.changes()).extracting(Change::kind).doesNotContain(Change.Kind.THINNER, Change.Kind.THICKER);
        // each line is what asking for it gives, within what the coarse resolution costs
        TargetResult larger = part(
                "m30-flush", Map.of("material", "aluminium", "thickness", "1 mm", "shape", "square", "side", "18 mm"));
        assertThat(on(advice, Change.Kind.LARGER_SWITCH))
                .isCloseTo(larger.distance().on(), within(0.15e-3));
        assertThat(advice.changes()).extracting(Change::kind).doesNotContain(Change.Kind.LARGER_TARGET);

        Explanation why = part.assessment().orElseThrow().explanation().orElseThrow();
        Explanation.Front front = why.front().orElseThrow();
        assertThat(front.regime()).isEqualTo(Regime.MIRROR);
        assertThat(front.thickness() / front.skinDepth()).isCloseTo(6.6, within(0.05));
        assertThat(why.sensitivities()).hasSize(8).allMatch(s -> s.factor() > 0.3 && s.factor() < 0.5);
    }

    @Test
    void aSmallDiscIsHelpedBySize() {
        TargetResult part = part(
                "p14-reference", Map.of("material", "fe360", "thickness", "4 mm", "shape", "disc", "diameter", "8 mm"));
        Advice advice = part.assessment().orElseThrow().advice().orElseThrow();
        TargetResult standardSize = part("p14-reference", Map.of("material", "fe360", "thickness", "4 mm"));
        assertThat(on(advice, Change.Kind.STANDARD_SIZE))
                .isCloseTo(standardSize.distance().on(), within(0.05e-3));
        assertThat(on(advice, Change.Kind.LARGER_TARGET))
                .isBetween(part.distance().on(), 5.1e-3);
        assertThat(advice.otherPrinciple()).isFalse();
    }

    @Test
    void nothingIsNeededForFoilNearItsBestThickness() {
        Assessment foil = part("p14-reference", Map.of("material", "aluminium", "thickness", "8 um"))
                .assessment()
                .orElseThrow();
        assertThat(foil.advice().orElseThrow().needed()).isFalse();
        assertThat(foil.advice().orElseThrow().changes()).isEmpty();
        Explanation why = foil.explanation().orElseThrow();
        assertThat(why.front().orElseThrow().regime()).isEqualTo(Regime.RESISTOR);
        assertThat(why.remedy()).contains(Explanation.Remedy.THICKNESS_NEAR_BEST);
    }

    @Test
    void aThickFoilIsToldItsBestThickness() {
        TargetResult thick = part("m18-flush", Map.of("material", "aluminium", "thickness", "0.1 mm"));
        Advice advice = thick.assessment().orElseThrow().advice().orElseThrow();
        Change thinner = advice.changes().stream()
                .filter(c -> c.kind() == Change.Kind.THINNER)
                .findFirst()
                .orElseThrow();
        TargetResult made =
                part("m18-flush", Map.of("material", "aluminium", "thickness", thinner.value() * 1e6 + " um"));
        assertThat(thinner.on()).isCloseTo(made.distance().on(), within(0.05e-3));
    }

    /** The reason must not contradict the distances: the larger the share of the best thickness, the farther it is detected. */
    @Test
    void theShareOfTheBestThicknessFollowsTheDistance() {
        record Found(double on, double share) {}
        List<Found> foils = java.util.stream.Stream.of("3.2 um", "5.6 um", "10 um", "18 um")
                .map(t -> part("m12-flush", Map.of("material", "aluminium", "thickness", t, "shape", "plate")))
                .map(r -> new Found(
                        r.distance().on(), ((Reason.Resistor) r.reason().cause()).share()))
                .sorted(Comparator.comparingDouble(Found::on))
                .toList();
        assertThat(foils).extracting(Found::share).isSorted();
        assertThat(foils.get(3).share()).isBetween(0.99, 1.0);
    }

    /** A chip and a die-cast lid cannot be made wider or thinner. */
    @Test
    void nothingIsAskedThatNobodyCanDo() {
        Map<String, String> chip =
                Map.of("material", "brass", "thickness", "0.3 mm", "shape", "disc", "diameter", "4 mm");
        Advice advice =
                part("m18-flush", chip).assessment().orElseThrow().advice().orElseThrow();
        assertThat(advice.changes())
                .extracting(Change::kind)
                .doesNotContain(
                        Change.Kind.LARGER_TARGET, Change.Kind.STANDARD_SIZE, Change.Kind.THINNER, Change.Kind.THICKER);
    }

    @Test
    void whatHasNoEffectGetsASteelFlag() {
        TargetResult water = part("m12-flush", Map.of("material", "water", "thickness", "5 mm"));
        Assessment a = water.assessment().orElseThrow();
        assertThat(a.assurance().anywhereOn()).isFalse();
        assertThat(a.advice().orElseThrow().changes().get(0).kind()).isEqualTo(Change.Kind.STEEL_FLAG);
    }

    @Test
    void aPartBesideTheAxisIsToldToComeBack() {
        Map<String, String> words = Map.of(
                "material", "aluminium", "shape", "cylinder", "diameter", "8 mm", "length", "12 mm", "offset", "6 mm");
        Advice advice =
                part("m18-flush", words).assessment().orElseThrow().advice().orElseThrow();
        TargetResult onAxis = part(
                "m18-flush",
                Map.of("material", "aluminium", "shape", "cylinder", "diameter", "8 mm", "length", "12 mm"));
        assertThat(on(advice, Change.Kind.ON_AXIS)).isCloseTo(onAxis.distance().on(), within(0.1e-3));
    }

    @Test
    void aSlitTubeIsToldToCloseItAndHasNoBestThickness() {
        Map<String, String> words = Map.of(
                "material",
                "brass",
                "shape",
                "tube",
                "outer",
                "20 mm",
                "inner",
                "18 mm",
                "length",
                "20 mm",
                "slit",
                "yes");
        Assessment a = part("m18-non-flush", words).assessment().orElseThrow();
        assertThat(a.advice().orElseThrow().changes())
                .extracting(Change::kind)
                .contains(Change.Kind.CLOSED_RING)
                .doesNotContain(Change.Kind.THINNER, Change.Kind.THICKER);
    }

    /** Zinc of 8 um lets the field through: what is said is said of the steel behind it. */
    @Test
    void aPlatedWasherIsExplainedByItsBase() {
        Map<String, String> words = Map.of(
                "material",
                "fe360",
                "shape",
                "washer",
                "outer",
                "20 mm",
                "inner",
                "10 mm",
                "thickness",
                "2 mm",
                "coating.material",
                "zinc",
                "coating.thickness",
                "8 um");
        Assessment a = part("m18-flush", words).assessment().orElseThrow();
        Explanation why = a.explanation().orElseThrow();
        assertThat(why.front().orElseThrow().material()).isEqualTo("mild steel Fe 360");
        assertThat(why.front().orElseThrow().regime()).isEqualTo(Regime.MAGNETIC);
        assertThat(why.remedy()).isEmpty();
        assertThat(why.sensitivities()).noneMatch(s -> s.quantity() == Sensitivity.Quantity.THICKNESS);
    }
}
