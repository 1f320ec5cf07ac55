package eddyreach.kinds.offaxis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.OffAxisLimits;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.field.axial.Resolution;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.kinds.approach.PartQuestion;
import eddyreach.model.read.Library;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Picture;
import eddyreach.report.words.ReasonText;
import eddyreach.studies.StudyReader;
import eddyreach.study.OffsetRange;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The shipped zone and pass against the studies on the axis, and what must hold for any target beside the axis. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedOffAxisTest {

    private static final Library LIBRARY = new Library(Path.of(""));

    private final ZoneInput zone = (ZoneInput) StudyReader.read(LIBRARY.studyFile("m18-zone"), LIBRARY);
    private final ZoneResult result = (ZoneResult) zone.run();

    private ZoneTarget zone(String id) {
        return result.targets().stream()
                .filter(t -> t.target().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Target target(Map<String, String> words) {
        return PartQuestion.read("question", "m18-flush", Optional.empty(), words, List.of(), LIBRARY)
                .targets()
                .get(0);
    }

    private static TargetResult approach(Target target) {
        ApproachInput one = PartQuestion.read(
                "question",
                "m18-flush",
                Optional.empty(),
                Map.of("material", "fe360", "thickness", "1 mm"),
                List.of(),
                LIBRARY);
        ApproachInput study = new ApproachInput(
                one.header(), List.of(target), Map.of(), one.firstDistance(), one.lastDistance(), 21, false);
        return ApproachRunner.run(study).targets().get(1);
    }

    @Test
    void onTheAxisAZoneIsTheApproach() {
        for (ZoneTarget t : result.targets()) {
            double on = t.distances().get(0).on();
            double expected = t.target().id().equals("standard")
                    ? zone.switchModel().effectiveDistance()
                    : approach(t.target()).distance().on();
            assertThat(on).as(t.target().id()).isCloseTo(expected, within(0.005 * expected));
        }
    }

    /** A mirror is seen a little better where its edge lies before the coil, so that 10 % are left to it. */
    @Test
    void labelsAreInsideAndApart() {
        for (Picture picture : result.presentation().pictures()) {
            DrawnTexts drawn = DrawnTexts.of(picture);
            assertThat(drawn.texts()).contains(picture.title());
            assertThat(drawn.faults()).isEmpty();
        }
    }

    @Test
    void zonesEndAndShrinkOutwards() {
        for (ZoneTarget t : result.targets()) {
            String id = t.target().id();
            double most = t.distances().get(0).on();
            int last = t.offset().length - 1;
            for (SwitchDistance d : t.distances()) {
                assertThat(Double.isFinite(d.on()) ? d.on() : 0).as(id).isLessThanOrEqualTo(1.1 * most);
                if (Double.isFinite(d.on()) && Double.isFinite(d.off())) {
                    assertThat(d.off()).as(id).isGreaterThan(d.on());
                }
            }
            assertThat(t.distances().get(last).outcome()).as(id).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
            assertThat(t.offEdge().offset()).as(id).isGreaterThan(t.onEdge().offset());
        }
        ZoneTarget steel = zone("steel-9mm");
        double before = Double.POSITIVE_INFINITY;
        for (SwitchDistance d : steel.distances()) {
            double on = Double.isFinite(d.on()) ? d.on() : 0;
            assertThat(on).isLessThanOrEqualTo(before);
            before = on;
        }
        assertThat(steel.onEdge().offset()).isLessThan(zone("standard").onEdge().offset());
    }

    /** A square's bar holds its outline beside the axis; a disc's need not. */
    @Test
    void barsOfSquaresAndRectanglesHoldTheirOutline() {
        Target square = zone("standard").target();
        double shift = OffAxisLimits.outlineShift(square);
        assertThat(shift).isCloseTo(18e-3 / Math.sqrt(Math.PI) - 9e-3, within(1e-9));
        assertThat(OffAxisLimits.outlineShift(zone("steel-9mm").target())).isZero();
        Target rectangle = target(Map.of(
                "material", "fe360", "thickness", "1 mm", "shape", "rectangle", "width", "20 mm", "height", "10 mm"));
        assertThat(OffAxisLimits.outlineShift(rectangle)).isCloseTo(rectangle.radius() - 5e-3, within(1e-9));
        ZoneTarget t = zone("standard");
        for (int i = 1; i < t.offset().length - 1; i++) {
            SwitchDistance here = t.distances().get(i);
            SwitchDistance next = t.distances().get(i + 1);
            if (Double.isFinite(here.on()) && Double.isFinite(next.on())) {
                double slope = (here.on() - next.on()) / (t.offset()[i + 1] - t.offset()[i]);
                // the bar is made of the curve itself, the slope from one point to the next
                assertThat(here.onError()).as("offset " + t.offset()[i]).isGreaterThan(0.5 * slope * shift);
            }
        }
        assertThat(t.warnings()).anyMatch(w -> w.kind() == Warning.Kind.OUTLINE_BESIDE_AXIS);
    }

    @Test
    void anApproachBesideTheAxisIsTheZoneThere() {
        ZoneTarget steel = zone("steel-9mm");
        int i = steel.offset().length / 4;
        double on = steel.distances().get(i).on();
        TargetResult beside = approach(steel.target().beside(steel.offset()[i]));
        assertThat(beside.distance().on()).isCloseTo(on, within(0.005 * on));
        assertThat(approach(steel.target().beside(0)).distance().on())
                .isEqualTo(approach(steel.target()).distance().on());
    }

    @Test
    void aTargetMayHaveTheIdOfTheStandardTarget() {
        Target disc = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "9 mm"));
        Target named = new Target("fe360", disc.label(), disc.body(), 3e-3);
        TargetResult found = approach(named);
        assertThat(found.target().id()).isEqualTo("fe360");
        assertThat(found.factor()).isLessThan(0.9);
    }

    @Test
    void anEndlessPlateIsTheSameAtEveryOffset() {
        Target plate = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "plate"));
        double on = approach(plate).distance().on();
        assertThat(approach(plate.beside(7e-3)).distance().on()).isEqualTo(on);
        double core = zone.switchModel().coreRadius();
        Target disc = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "100 mm"));
        assertThat(OffsetLimit.endless(disc.beside(7e-3), core)).isTrue();
        assertThat(OffsetLimit.endless(disc.beside(45e-3), core)).isFalse();
    }

    /** A disc that counts as endless before the middle of the face: with its edge over the axis about half of its loss is left. */
    @Test
    void theEdgeOfAWideDiscMattersWhenItComesNear() {
        Target disc = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "90 mm"));
        Target edge = disc.beside(disc.radius());
        ResolutionLadder.Step step = coarse(edge);
        double sr = zone.switchModel().effectiveDistance();
        double free = step.solved().free().conductance();
        double middle = step.solved().state(step.solved().target(disc), sr).conductance() - free;
        double near = step.solved().state(step.solved().target(edge), sr).conductance() - free;
        assertThat(step.solved().fields().endless(disc)).isTrue();
        assertThat(near / middle).isBetween(0.35, 0.65);
    }

    @Test
    void aTargetTooWideToBeComputedWithItsEdgeNearIsRefused() {
        Map<String, String> words = Map.of(
                "material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "900 mm", "offset", "460 mm");
        assertThatThrownBy(() -> target(words))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("offset")
                .hasMessageContaining("460 mm")
                .hasMessageContaining("12 radii");
    }

    private ResolutionLadder.Step coarse(Target target) {
        return ResolutionLadder.trimmed(
                zone.switchModel(),
                zone.standard(),
                Resolution.COARSE.withoutFields(),
                List.of(zone.standard(), target),
                bytes -> {});
    }

    @Test
    void aTargetFarOutsideIsNeverOnAndSaysWhy() {
        Target disc = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "100 mm"));
        TargetResult far = approach(disc.beside(0.9));
        assertThat(far.distance().outcome()).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
        assertThat(far.reason().cause()).isInstanceOf(Reason.BesideFace.class);
        assertThat(ReasonText.of(far.reason()))
                .contains("never on")
                .contains("entirely beside the active face")
                .doesNotContain("%");
        assertThat(far.warnings()).anyMatch(w -> w.kind() == Warning.Kind.BESIDE_UNSEEN);
    }

    /** What is taken as not there would add, even in contact, hardly anything to the loss that switches. */
    @Test
    void whatIsTakenAsNotThereHardlyMatters() {
        double core = zone.switchModel().coreRadius();
        Target disc = target(Map.of("material", "fe360", "thickness", "1 mm", "shape", "disc", "diameter", "40 mm"));
        Target near = disc.beside(0.999 * OffsetLimit.farthest(disc, core));
        assertThat(OffsetLimit.unseen(near, core)).isFalse();
        ResolutionLadder.Step step = coarse(near);
        double free = step.solved().free().conductance();
        double more = step.solved().state(step.solved().target(near), 0).conductance() - free;
        assertThat(Math.abs(more)).isLessThan(0.02 * (step.trim().on() - free));
    }

    @Test
    void aPassGoesOnNearerToTheAxisThanItGoesOff() {
        PassInput shipped = (PassInput) StudyReader.read(LIBRARY.studyFile("m18-pass"), LIBRARY);
        PassResult pass = (PassResult) new PassInput(
                        shipped.header(),
                        shipped.targets(),
                        shipped.distance(),
                        new OffsetRange(shipped.offsets().last(), 41))
                .run();
        for (PassTarget t : pass.targets()) {
            String id = t.target().id();
            int n = t.offset().length;
            for (int i = 0; i < n; i++) {
                assertThat(t.offset()[n - 1 - i]).as(id).isCloseTo(-t.offset()[i], within(1e-12));
                assertThat(t.amplitude()[n - 1 - i]).as(id).isEqualTo(t.amplitude()[i]);
            }
            if (id.equals("aluminium-20mm")) {
                assertThat(t.changes()).isEmpty();
                continue;
            }
            assertThat(t.changes()).as(id).hasSize(2);
            double on = -t.changes().get(0).offset();
            double off = t.changes().get(1).offset();
            assertThat(on).as(id).isPositive().isLessThan(off);
            // where the zone's contour comes down to the distance of the pass
            ZoneTarget z = zone(id);
            int i = 0;
            while (z.distances().get(i + 1).on() > shipped.distance()) {
                i++;
            }
            assertThat(on).as(id).isBetween(z.offset()[i], z.offset()[i + 1]);
        }
    }
}
