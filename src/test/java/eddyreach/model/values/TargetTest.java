package eddyreach.model.values;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.List;
import org.junit.jupiter.api.Test;

class TargetTest {

    private static final Material STEEL = new Material("steel", "steel", 5e6, 5e-3, 200, 0, "made up");
    private static final Material ZINC = new Material("zinc", "zinc", 16e6, 4e-3, 1, 0, "made up");
    private static final Material PLASTIC = new Material("plastic", "plastic", 0, 0, 1, 0, "made up");
    private static final Material FERRITE = new Material("ferrite", "ferrite", 0, 0, 1500, 20, "made up");

    private static Target sheet(Target.Outline outline, Layer... layers) {
        return new Target("t", "a target", outline, List.of(layers));
    }

    @Test
    void outlinesCountAsTheDiscOfEqualArea() {
        assertThat(new Target.Outline.Endless().equivalentRadius()).isInfinite();
        assertThat(new Target.Outline.Disc(20e-3).equivalentRadius()).isEqualTo(10e-3);
        assertThat(new Target.Outline.Square(18e-3).equivalentRadius()).isCloseTo(10.155e-3, within(1e-6));
        assertThat(new Target.Outline.Rectangle(10e-3, 40e-3).equivalentRadius())
                .isCloseTo(11.284e-3, within(1e-6));
        assertThat(new Target.Outline.Rectangle(10e-3, 40e-3).aspect()).isEqualTo(4);
        assertThat(new Target.Outline.Rectangle(40e-3, 10e-3).aspect()).isEqualTo(4);
    }

    @Test
    void layersOfASheetLieBehindEachOther() {
        Target two = sheet(new Target.Outline.Disc(20e-3), new Layer(ZINC, 1e-4), new Layer(STEEL, 2e-3));
        assertThat(two.layers()).hasSize(2);
        assertThat(two.thickness()).isCloseTo(2.1e-3, within(1e-15));
        assertThat(two.radius()).isEqualTo(10e-3);
        assertThat(two.parts())
                .containsExactly(
                        new Part("t layer 1", Role.TARGET, new Section(0, 10e-3, 0, 1e-4), ZINC),
                        new Part("t layer 2", Role.TARGET, new Section(0, 10e-3, 1e-4, 1e-4 + 2e-3), STEEL));
        Target one = sheet(new Target.Outline.Disc(20e-3), new Layer(STEEL, 2e-3));
        assertThat(one.parts()).extracting(Part::name).containsExactly("t");
        assertThat(sheet(new Target.Outline.Endless(), new Layer(STEEL, 2e-3)).parts())
                .as("endless: no ring")
                .isEmpty();
    }

    @Test
    void theFrontIsTheFirstConductor() {
        Target.Outline endless = new Target.Outline.Endless();
        assertThat(sheet(endless, new Layer(PLASTIC, 1e-3), new Layer(ZINC, 1e-3))
                        .front())
                .isEqualTo(ZINC);
        assertThat(sheet(endless, new Layer(PLASTIC, 1e-3), new Layer(FERRITE, 1e-3))
                        .front())
                .isEqualTo(PLASTIC);
        assertThat(sheet(endless, new Layer(PLASTIC, 1e-3)).withoutEffect()).isTrue();
        assertThat(sheet(endless, new Layer(PLASTIC, 1e-3), new Layer(FERRITE, 1e-3))
                        .withoutEffect())
                .isFalse();
    }

    @Test
    void whatCountsIsTheBodyAndWhereItLies() {
        Target a = sheet(new Target.Outline.Endless(), new Layer(STEEL, 1e-3));
        Target named = new Target("other", "another name", a.body());
        assertThat(a.actsAs(named)).isTrue();
        assertThat(a.actsAs(named.beside(1e-3))).isFalse();
        assertThat(a.actsAs(sheet(new Target.Outline.Endless(), new Layer(STEEL, 2e-3))))
                .isFalse();
        assertThat(named.beside(1e-3)).isEqualTo(new Target("other", "another name", a.body(), 1e-3));
        assertThat(new Target("b", "ball", new Body.Ball(8e-3, STEEL)).sheet()).isEmpty();
        assertThat(new Target("b", "ball", new Body.Ball(8e-3, STEEL)).layers()).isEmpty();
        assertThat(a.sheet()).isPresent();
    }

    /** The discs fill the height and hold the volume of the ball, each that of its slice. */
    @Test
    void discsHoldTheVolumeOfTheirSlice() {
        double d = 9e-3;
        Body.Ball ball = new Body.Ball(d, STEEL);
        List<Part> discs = ball.stepped("b", 7);
        double volume = 0;
        for (int i = 0; i < discs.size(); i++) {
            Section s = discs.get(i).section();
            assertThat(s.z0()).isCloseTo(d * i / 7, within(1e-15));
            assertThat(s.z1()).isCloseTo(d * (i + 1) / 7, within(1e-15));
            volume += Math.PI * s.r1() * s.r1() * (s.z1() - s.z0());
        }
        assertThat(volume).isCloseTo(Math.PI * d * d * d / 6, within(1e-18));
        // the middle slice by hand: mean of z (d - z) over 3d/7 to 4d/7 is d^2 (1/4 - 1/588)
        assertThat(discs.get(3).section().r1()).isCloseTo(d * Math.sqrt(1 / 4.0 - 1 / 588.0), within(1e-15));
        assertThat(discs).extracting(Part::name).startsWith("b step 1", "b step 2");
        assertThat(ball.radius()).isEqualTo(4.5e-3);
        assertThat(ball.thickness()).isEqualTo(9e-3);
        assertThat(ball.materials()).containsExactly(STEEL);
        assertThat(ball.made(m -> ZINC)).isEqualTo(new Body.Ball(d, ZINC));
    }

    @Test
    void ringsAreSortedAndNamed() {
        Ring back = new Ring("shank", new Section(1e-3, 4e-3, 5e-3, 9e-3), STEEL, true);
        Ring front = new Ring("head", new Section(1e-3, 7e-3, 0, 5e-3), ZINC, false);
        Body.Rings rings = new Body.Rings(List.of(back, front));
        assertThat(rings.materials()).containsExactly(ZINC, STEEL);
        assertThat(rings.thickness()).isEqualTo(9e-3);
        assertThat(rings.radius()).isEqualTo(7e-3);
        assertThat(rings.parts("screw"))
                .containsExactly(
                        new Part("screw head", Role.TARGET, front.section(), ZINC, false),
                        new Part("screw shank", Role.TARGET, back.section(), STEEL, true));
        assertThat(new Body.Rings(List.of(front)).parts("washer"))
                .extracting(Part::name)
                .containsExactly("washer");
        assertThat(rings.made(m -> PLASTIC).rings())
                .containsExactly(
                        new Ring("head", front.section(), PLASTIC, false),
                        new Ring("shank", back.section(), PLASTIC, true));
        Body.Sheet sheet = new Body.Sheet(
                new Target.Outline.Disc(1e-2), List.of(new Layer(ZINC, 1e-3)), new Texture.Perforated(0.4));
        assertThat(sheet.made(m -> STEEL))
                .isEqualTo(new Body.Sheet(
                        new Target.Outline.Disc(1e-2), List.of(new Layer(STEEL, 1e-3)), new Texture.Perforated(0.4)));
    }

    @Test
    void sheetsWithOpeningsCountAsSolidOnesOfLessConductivity() {
        assertThat(new Texture.Solid().conductivityRatio()).isEqualTo(1);
        assertThat(new Texture.Perforated(0.25).conductivityRatio()).isCloseTo(0.6, within(1e-15));
        assertThat(new Texture.Mesh(0.2e-3, 1e-3).conductivityRatio()).isCloseTo(0.157080, within(1e-6));
        assertThat(new Texture.Solid().of(ZINC)).isSameAs(ZINC);
        assertThat(new Texture.Perforated(0.25).of(PLASTIC)).isSameAs(PLASTIC);
        Material open = new Texture.Perforated(0.25).of(ZINC);
        assertThat(open.name()).isEqualTo("zinc (25 % open)");
        assertThat(open.id()).isEqualTo("zinc-times-0.6000");
        assertThat(open.conductivity(20)).isCloseTo(0.6 * 16e6, within(1e-6));
        assertThat(new Texture.Mesh(0.2e-3, 1e-3).of(ZINC).name()).isEqualTo("zinc (mesh, pitch 1 mm)");
    }

    @Test
    void aScrewWithItsPointFirstIsTheSameBodyTurned() {
        Round head = Round.screw(6e-3, 4e-3, 3e-3, 20e-3, false);
        Round point = Round.screw(6e-3, 4e-3, 3e-3, 20e-3, true);
        assertThat(head.sections())
                .containsExactly(new Section(0, 6e-3, 0, 4e-3), new Section(0, 3e-3, 4e-3, 4e-3 + 20e-3));
        assertThat(point.sections())
                .containsExactly(new Section(0, 3e-3, 0, 20e-3), new Section(0, 6e-3, 20e-3, 20e-3 + 4e-3));
        assertThat(head.mostCoating()).as("half the head's height").isEqualTo(2e-3);
        assertThat(Round.cylinder(1e-3, 9e-3).mostCoating()).as("the radius").isEqualTo(1e-3);
        assertThat(Round.hollow(4e-3, 5e-3, 9e-3, false).mostCoating())
                .as("half the wall")
                .isCloseTo(0.5e-3, within(1e-15));
    }

    /** The coating of a screw, section by section. */
    @Test
    void theCoatingOfAScrewLiesOnEverySide() {
        double t = 1e-3;
        List<Ring> rings =
                Round.screw(6e-3, 4e-3, 3e-3, 20e-3, false).rings(STEEL, java.util.Optional.of(new Layer(ZINC, t)));
        double[][] sections = rings.stream()
                .map(r -> new double[] {
                    r.section().r0(),
                    r.section().r1(),
                    r.section().z0(),
                    r.section().z1()
                })
                .toArray(double[][]::new);
        double[][] expected = {
            {0, 5e-3, 1e-3, 3e-3},
            {0, 2e-3, 3e-3, 23e-3},
            {0, 6e-3, 0, 1e-3},
            {0, 3e-3, 23e-3, 24e-3},
            {5e-3, 6e-3, 1e-3, 4e-3},
            {2e-3, 3e-3, 4e-3, 23e-3},
            {2e-3, 5e-3, 3e-3, 4e-3},
        };
        assertThat(sections).hasDimensions(7, 4);
        for (int i = 0; i < expected.length; i++) {
            assertThat(sections[i]).as(rings.get(i).name()).containsExactly(expected[i], within(1e-15));
        }
        assertThat(rings)
                .extracting(Ring::name)
                .containsExactly(
                        "head",
                        "shank",
                        "coating front",
                        "coating back",
                        "coating outside head",
                        "coating outside shank",
                        "coating shoulder");
    }
}
