package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.model.read.Library;
import eddyreach.model.values.Target;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every study that is shipped runs, keeps its books and switches where physics says it must. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedStudiesTest {

    /**
     * Ten times w mu0 / (2 k) at 200 kHz and k = 250/m, the sheet resistance at which a sheet takes the most loss, ohm: a
     * sheet below it takes at least a fifth of that loss or is a mirror.
     */
    private static final double RESISTIVE = 0.03;

    private final Library library = new Library(Path.of(""));
    private final Map<String, ApproachResult> known = new ConcurrentHashMap<>();

    /** The studies of targets that come nearer; studies of other kinds have tests of their own. */
    List<String> ids() {
        return library.studies().stream()
                .filter(id -> StudyReader.read(library.studyFile(id), library) instanceof ApproachInput)
                .toList();
    }

    private ApproachInput input(String id) {
        return (ApproachInput) StudyReader.read(library.studyFile(id), library);
    }

    private ApproachResult result(String id) {
        return known.computeIfAbsent(id, i -> ApproachRunner.run(input(i).withoutFieldPictures()));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void lossesByPartAddUpToTheCoilsResistance(String id) {
        ApproachResult result = result(id);
        assertThat(result.trimmed().freeBudget().total())
                .isCloseTo(
                        result.undamped().resistance(),
                        within(1e-3 * result.undamped().resistance()));
        for (TargetResult t : result.targets()) {
            double[] g = t.curve().distance();
            double at = t.budget().distance();
            assertThat(at).as("the budget lies within the curve").isBetween(g[0], g[g.length - 1]);
            double curve = new SplineInterpolator()
                    .interpolate(g, t.curve().resistance())
                    .value(at);
            assertThat(t.budget().total()).as(id + " " + t.target().id()).isCloseTo(curve, within(1e-3 * curve));
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void theStandardTargetSwitchesWhereTheSwitchIsTrimmed(String id) {
        ApproachResult result = result(id);
        SwitchDistance standard = result.targets().get(0).distance();
        double sr = result.model().effectiveDistance();
        assertThat(standard.on()).isCloseTo(sr, within(1e-4 * sr));
        assertThat(standard.off()).isCloseTo(sr * (1 + result.model().differentialTravel()), within(1e-4 * sr));
    }

    @ParameterizedTest
    @MethodSource("ids")
    void metalIsSeenAndNothingElse(String id) {
        ApproachResult result = result(id);
        double standard = new Target.Outline.Square(result.model().standardSide()).equivalentRadius();
        for (TargetResult t : result.targets()) {
            Target target = t.target();
            double sheet = target.layers().stream()
                    .mapToDouble(l -> l.material().conductivity(20) * l.thickness())
                    .sum();
            String name = id + " " + target.id();
            if (target.layers().stream()
                                    .mapToDouble(l -> l.material().hasEffect() ? 0 : l.thickness())
                                    .sum()
                            < 0.1e-3
                    && sheet > 1 / RESISTIVE
                    && target.radius() >= standard) {
                assertThat(t.distance().outcome()).as(name).isEqualTo(SwitchDistance.Outcome.SWITCHES);
            }
            if (target.withoutEffect()) {
                assertThat(t.distance().outcome()).as(name).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
            }
            if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES) {
                assertThat(t.distance().on())
                        .as(name)
                        .isBetween(0.0, t.distance().off());
                double error = Math.max(t.distance().onError(), t.distance().offError());
                assertThat(error).as(name).isLessThan(input(id).accuracy());
            }
        }
    }

    private double on(String study, String target) {
        return result(study).targets().stream()
                .filter(t -> t.target().id().equals(target))
                .findFirst()
                .orElseThrow()
                .distance()
                .on();
    }

    /** The current round a stainless ring is most of what is seen of it; the cap before the steel costs its thickness. */
    @Test
    void oddPartsStandInOrder() {
        String id = "odd-parts-m18";
        assertThat(on(id, "ring-slit")).isLessThan(0.5 * on(id, "ring"));
        assertThat(List.of(on(id, "slug"), on(id, "tube"), on(id, "ball"), on(id, "washer"), on(id, "fe360")))
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(on(id, "lid")).isBetween(on(id, "fe360") - 1.1e-3, on(id, "fe360") - 0.9e-3);
    }

    /** Thick conductors that are not magnetic lose as the square root of resistivity. */
    @Test
    void deratingFollowsResistivity() {
        String id = "m18-derating";
        assertThat(List.of(
                        on(id, "copper"),
                        on(id, "aluminium"),
                        on(id, "brass"),
                        on(id, "stainless-304"),
                        on(id, "fe360")))
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** Above the thickness of the most loss, near 6 um for aluminium, a thinner foil is seen from farther away. */
    @Test
    void foilIsSeenFromFartherThanSheet() {
        String id = "m18-foil-and-sheet";
        assertThat(List.of(on(id, "sheet-1mm"), on(id, "foil-50um"), on(id, "foil-20um"), on(id, "foil-10um")))
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(on(id, "foil-10um")).isGreaterThan(on(id, "fe360"));
        assertThat(on(id, "stainless-100um")).isGreaterThan(on(id, "stainless-1mm"));
    }
}
