package eddyreach.model.values;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwitchModelTest {

    private static final Material BRASS = new Material("brass", "brass", 15e6, 0, 1, 0, "made up");
    private static final SwitchModel M18 = new Library(Path.of("")).switchModel("m18-flush");

    private static SwitchModel with(List<Part> parts, Optional<MetricThread> thread, double rated) {
        return new SwitchModel(
                M18.id(),
                M18.name(),
                M18.note(),
                M18.mounting(),
                rated,
                M18.effectiveDistance(),
                18e-3,
                M18.frequency(),
                M18.winding(),
                parts,
                M18.element(),
                M18.differentialTravel(),
                M18.output(),
                thread);
    }

    private static Part part(Role role, double r1, double z0) {
        return new Part("p", role, new Section(r1 / 2, r1, z0, 0), BRASS);
    }

    @Test
    void itsSizesFollowFromItsParts() {
        SwitchModel housed = with(
                List.of(
                        part(Role.CORE, 7e-3, -5e-3),
                        part(Role.HOUSING, 8.7e-3, -40e-3),
                        part(Role.HOUSING, 8e-3, -50e-3)),
                Optional.empty(),
                5e-3);
        assertThat(housed.bodyDiameter()).isEqualTo(17.4e-3);
        assertThat(housed.clearanceHole()).isEqualTo(17.4e-3);
        assertThat(housed.rearEnd()).hasValue(-50e-3);
        assertThat(housed.coreRadius()).isEqualTo(7e-3);
        SwitchModel bare =
                with(List.of(), Optional.of(MetricThread.of("M18 x 1").orElseThrow()), 5e-3);
        assertThat(bare.bodyDiameter()).as("the face").isEqualTo(18e-3);
        assertThat(bare.clearanceHole()).as("of the thread").isEqualTo(20e-3);
        assertThat(bare.rearEnd()).isEmpty();
        assertThat(bare.coreRadius()).isEqualTo(M18.winding().section().r1());
    }

    @Test
    void theStandardTargetIsAsWideAsTheFaceOrThreeTimesTheDistance() {
        assertThat(with(List.of(), Optional.empty(), 5e-3).standardSide()).isEqualTo(18e-3);
        assertThat(with(List.of(), Optional.empty(), 8e-3).standardSide()).isCloseTo(24e-3, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({"M18 x 1, 18, 1, 20, 16.9175", "M8x1, 8, 1, 9, 6.9175", "M30 x 1.5, 30, 1.5, 33, 28.37625"})
    void metricThreads(String text, double nominal, double pitch, double clearance, double minor) {
        MetricThread t = MetricThread.of(text).orElseThrow();
        assertThat(t.nominal()).isCloseTo(nominal * 1e-3, within(1e-15));
        assertThat(t.pitch()).isCloseTo(pitch * 1e-3, within(1e-15));
        assertThat(t.clearance()).isCloseTo(clearance * 1e-3, within(1e-15));
        assertThat(t.minor()).isCloseTo(minor * 1e-3, within(1e-12));
        assertThat(t.text())
                .isEqualTo(text.replace("x", " x ").replace("  ", " ").replace("  ", " "));
    }

    @ParameterizedTest
    @CsvSource({"M18", "M18 x 0", "M17 x 1", "M8 x 2", "18 x 1", "M18 x 1 mm", "G1/4"})
    void whatIsNoThread(String text) {
        assertThat(MetricThread.of(text)).isEmpty();
    }

    @Test
    void howFarBesideATargetMayLie() {
        Layer layer = new Layer(BRASS, 1e-3);
        Target disc = new Target("t", "t", new Target.Outline.Disc(20e-3), List.of(layer));
        assertThat(OffsetLimit.farthest(disc, 7e-3)).isCloseTo(52e-3, within(1e-15));
        assertThat(OffsetLimit.unseen(disc.beside(53e-3), 7e-3)).isTrue();
        assertThat(OffsetLimit.unseen(disc.beside(51e-3), 7e-3)).isFalse();
        Target wide = new Target("t", "t", new Target.Outline.Disc(100e-3), List.of(layer));
        assertThat(OffsetLimit.endless(wide, 7e-3)).isTrue();
        assertThat(OffsetLimit.endless(wide.beside(9e-3), 7e-3))
                .as("its edge comes near")
                .isFalse();
        assertThat(OffsetLimit.endless(new Target("b", "b", new Body.Ball(1, BRASS)), 7e-3))
                .isFalse();
        SwitchModel model = with(List.of(part(Role.CORE, 7e-3, -5e-3)), Optional.empty(), 5e-3);
        assertThat(OffsetLimit.problem(disc.beside(20e-3), model)).isEmpty();
        assertThat(OffsetLimit.problem(wide, model)).isEmpty();
        assertThat(OffsetLimit.problem(disc.beside(200e-3), model))
                .as("not seen")
                .isEmpty();
        assertThat(OffsetLimit.problem(wide.beside(40e-3), model).orElseThrow())
                .startsWith("40 mm and half the target's width, 50 mm, are together more than 84 mm, 12 radii of this"
                        + " switch's core");
        assertThat(OffsetLimit.problem(wide.beside(33.9e-3), model)).isEmpty();
    }
}
