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

/** Mounts in numbers: what they are made of, what they stop, what a changed recess makes of them. */
class MountTest {

    private static final double MM = 1e-3;
    private static final double FOREVER = Double.POSITIVE_INFINITY;
    private static final Material STEEL = new Material("steel", "steel", 5e6, 5e-3, 200, 0, "made up");
    private static final Material PLASTIC = new Material("plastic", "plastic", 0, 0, 1, 0, "made up");

    private static Mount.Wall wall(double diameter, double edge, Mount.Opening... openings) {
        return new Mount.Wall(STEEL, 20 * MM, diameter, 20 * MM, List.of(openings), edge);
    }

    private static Mount mount(double surface, Mount.Wall wall, Mount.Cover cover, Part... rings) {
        return new Mount(
                "m",
                "a mount",
                "",
                surface,
                Optional.ofNullable(wall),
                Optional.ofNullable(cover),
                List.of(rings),
                Optional.empty());
    }

    private static Part ring(String name, double r0, double r1, double z0, double z1) {
        return new Part(name, Role.MOUNT, new Section(r0 * MM, r1 * MM, z0 * MM, z1 * MM), STEEL);
    }

    private static void assertSection(Part part, double r0, double r1, double z0, double z1) {
        Section s = part.section();
        assertThat(new double[] {s.r0(), s.r1(), s.z0(), s.z1()})
                .as(part.name())
                .containsExactly(new double[] {r0 * MM, r1 * MM, z0 * MM, z1 * MM}, within(1e-15));
    }

    @Test
    void aWallWithoutAnEndIsCutThreeRadiiBeyondItsWidestOpening() {
        Mount m = mount(4 * MM, wall(FOREVER, FOREVER, new Mount.Opening(36 * MM, 36 * MM, 0, 10 * MM)), null);
        List<Part> parts = m.parts(7 * MM);
        assertThat(parts).hasSize(2);
        assertSection(parts.get(0), 18, 18 + 21, -6, 4);
        assertSection(parts.get(1), 10, 18 + 21, -16, -6);
        assertThat(mount(0, wall(30 * MM, FOREVER), null).parts(7 * MM).get(0).section())
                .as("one with an end is not")
                .isEqualTo(new Section(10 * MM, 15 * MM, -20 * MM, 0));
        Mount ringed = mount(0, wall(FOREVER, FOREVER), null, ring("washer", 9, 25, -22, -20));
        assertThat(ringed.parts(7 * MM).get(0).section().r1()).isCloseTo(46 * MM, within(1e-15));
    }

    @Test
    void aConeLeansOutwardsTowardsTheSurface() {
        Mount m = mount(0, wall(100 * MM, FOREVER, new Mount.Opening(40 * MM, 20 * MM, 0, 10 * MM)), null);
        List<Part> parts = m.parts(7 * MM);
        assertThat(parts).extracting(Part::name).containsExactly("wall", "wall 2");
        assertSection(parts.get(0), 10, 41, -10, 0);
        assertThat(parts.get(0).section().flare()).isCloseTo(10 * MM, within(1e-15));
        assertSection(parts.get(1), 10, 41, -20, -10);
        assertThat(new Mount.Opening(2, 2, 0, 1).conical()).isFalse();
        assertThat(new Mount.Opening(3, 2, 0, 1).conical()).isTrue();
    }

    @Test
    void aCoverWithoutAnEndIsCutAtFiveRadii() {
        Mount.Cover endless = new Mount.Cover(PLASTIC, 2 * MM, 1 * MM, FOREVER);
        assertSection(mount(0, null, endless).parts(7 * MM).get(0), 0, 35, 2, 3);
        assertSection(
                mount(0, null, endless, ring("wide", 9, 60, -9, -8))
                        .parts(7 * MM)
                        .get(1),
                0,
                60,
                2,
                3);
        Mount.Cover disc = new Mount.Cover(PLASTIC, 2 * MM, 1 * MM, 24 * MM);
        assertSection(mount(0, null, disc).parts(7 * MM).get(0), 0, 12, 2, 3);
        assertThat(mount(0, null, disc).top()).as("plastic is no metal").isZero();
        assertThat(mount(0, null, disc).floor(1 * MM))
                .as("but it stops a target")
                .isCloseTo(3 * MM, within(1e-15));
    }

    @Test
    void whatStandsInTheWayOfATarget() {
        Mount stepped = mount(
                6 * MM,
                wall(
                        100 * MM,
                        FOREVER,
                        new Mount.Opening(40 * MM, 40 * MM, 0, 2 * MM),
                        new Mount.Opening(30 * MM, 30 * MM, 2 * MM, 5 * MM)),
                null);
        assertThat(stepped.floor(21 * MM)).isCloseTo(6 * MM, within(1e-15));
        assertThat(stepped.floor(20 * MM)).isCloseTo(4 * MM, within(1e-15));
        assertThat(stepped.floor(15 * MM)).isCloseTo(1 * MM, within(1e-15));
        assertThat(stepped.floor(10 * MM)).as("as wide as the bore").isZero();
        Mount cone = mount(10 * MM, wall(100 * MM, FOREVER, new Mount.Opening(40 * MM, 20 * MM, 0, 10 * MM)), null);
        assertThat(cone.floor(15 * MM)).isCloseTo(5 * MM, within(1e-15));
        assertThat(mount(-3 * MM, wall(100 * MM, FOREVER), null).floor(30 * MM))
                .as("a wall behind the face stops nothing")
                .isZero();
        Mount collar = mount(0, null, null, ring("collar", 12, 15, -3, 2));
        assertThat(collar.floor(12 * MM)).isZero();
        assertThat(collar.floor(12.1 * MM)).isEqualTo(2 * MM);
        assertThat(collar.top()).isEqualTo(2 * MM);
    }

    @Test
    void theFreeDiameterBetweenTwoHeights() {
        Mount collar = mount(0, null, null, ring("low", 12, 15, 0, 2), ring("high", 9, 15, 2, 4));
        assertThat(collar.clearance(0, 1 * MM)).isEqualTo(24 * MM);
        assertThat(collar.clearance(0, 3 * MM)).isEqualTo(18 * MM);
        assertThat(collar.clearance(2 * MM, 3 * MM)).isEqualTo(18 * MM);
        assertThat(collar.clearance(0, 2 * MM))
                .as("the upper one only begins there")
                .isEqualTo(24 * MM);
        assertThat(collar.clearance(4 * MM, 9 * MM)).isInfinite();
    }

    @Test
    void aStraightEdgeLiesBetweenTwoWalls() {
        Mount edged = mount(0, wall(100 * MM, 12 * MM), null);
        assertThat(edged.edged()).isTrue();
        assertThat(edged.bounds())
                .extracting(b -> b.wall().orElseThrow().diameter())
                .containsExactly(100 * MM, 24 * MM);
        assertThat(edged.bounds()).noneMatch(Mount::edged);
        Mount plain = mount(0, wall(100 * MM, FOREVER), null);
        assertThat(plain.edged()).isFalse();
        assertThat(plain.bounds()).containsExactly(plain);
    }

    @Test
    void anEmptyMountHasNothing() {
        assertThat(Mount.freeAir().isEmpty()).isTrue();
        assertThat(Mount.freeAir().parts(7 * MM)).isEmpty();
        assertThat(mount(0, wall(100 * MM, FOREVER), null).isEmpty()).isFalse();
        assertThat(mount(0, null, new Mount.Cover(PLASTIC, 0, MM, MM)).isEmpty())
                .isFalse();
        assertThat(mount(0, null, null, ring("a", 1, 2, 0, 1)).isEmpty()).isFalse();
        Mount.Background plate = new Mount.Background(STEEL, 2 * MM, FOREVER);
        assertThat(new Mount(
                                "m",
                                "m",
                                "",
                                0,
                                Optional.empty(),
                                Optional.empty(),
                                List.of(),
                                Optional.of(new Mount.Standing(plate, 9 * MM)))
                        .isEmpty())
                .isFalse();
        assertThat(plate.asTarget().radius()).isInfinite();
        assertThat(plate.asTarget().thickness()).isEqualTo(2 * MM);
        assertThat(new Mount.Background(STEEL, 2 * MM, 50 * MM).asTarget().radius())
                .isEqualTo(25 * MM);
    }

    @Test
    void whatMustFitIntoARecessIsTheCircleAroundATarget() {
        Layer layer = new Layer(STEEL, MM);
        assertThat(Mount.halfWidth(new Target("t", "t", new Target.Outline.Square(20 * MM), List.of(layer))))
                .isCloseTo(14.1421 * MM, within(1e-7));
        assertThat(Mount.halfWidth(
                        new Target("t", "t", new Target.Outline.Rectangle(30 * MM, 40 * MM), List.of(layer))))
                .isCloseTo(25 * MM, within(1e-15));
        assertThat(Mount.halfWidth(new Target("t", "t", new Target.Outline.Disc(30 * MM), List.of(layer))))
                .isEqualTo(15 * MM);
    }

    @Test
    void anotherRecess() {
        SwitchModel model = new Library(Path.of("")).switchModel("m18-flush");
        Mount base = mount(4 * MM, wall(FOREVER, FOREVER, new Mount.Opening(36 * MM, 36 * MM, 0, 4 * MM)), null);
        Recess recess = new Recess(base, true);
        assertThat(recess.diameter()).isEqualTo(36 * MM);
        assertThat(recess.depth()).isEqualTo(4 * MM);
        assertThat(recess.widest(model))
                .as("six diameters of the face")
                .isCloseTo(6 * model.faceDiameter(), within(1e-12));
        assertThat(new Recess(mount(0, wall(50 * MM, FOREVER), null), true).widest(model))
                .isCloseTo(49 * MM, within(1e-12));
        assertThat(new Recess(mount(0, wall(50 * MM, 20 * MM), null), true).widest(model))
                .as("up to the edge")
                .isCloseTo(39 * MM, within(1e-12));
        assertThat(recess.deepest(model)).isCloseTo(19 * MM, within(1e-12));
        double rear = model.rearEnd().orElseThrow();
        Mount thick = mount(2 * MM, new Mount.Wall(STEEL, 200 * MM, FOREVER, 20 * MM, List.of(), FOREVER), null);
        assertThat(new Recess(thick, false).deepest(model)).isCloseTo(2 * MM - rear, within(1e-12));
        assertThat(new Recess(thick, true).deepest(model)).isCloseTo(199 * MM, within(1e-12));

        Mount deeper = recess.with(40 * MM, 6 * MM);
        assertThat(deeper.surface()).as("the face moves with the bottom").isCloseTo(6 * MM, within(1e-15));
        assertThat(deeper.wall().orElseThrow().openings())
                .containsExactly(new Mount.Opening(40 * MM, 40 * MM, 0, 4 * MM * (6 * MM / (4 * MM))));
        Mount still = new Recess(base, false).with(40 * MM, 6 * MM);
        assertThat(still.surface()).isEqualTo(4 * MM);
    }

    @Test
    void withoutARecessTheBoreCounts() {
        Mount flush = mount(-3 * MM, wall(FOREVER, FOREVER), null);
        Recess none = new Recess(flush, false);
        assertThat(none.diameter()).isEqualTo(20 * MM);
        assertThat(none.depth()).as("proud: no depth").isZero();
        assertThat(new Recess(mount(3 * MM, wall(FOREVER, FOREVER), null), false).depth())
                .isEqualTo(3 * MM);
        assertThat(none.with(30 * MM, 5 * MM).wall().orElseThrow().openings())
                .containsExactly(new Mount.Opening(30 * MM, 30 * MM, 0, 5 * MM));
        assertThat(none.with(20 * MM, 5 * MM).wall().orElseThrow().openings()).isEmpty();
        assertThat(none.with(30 * MM, 0).wall().orElseThrow().openings()).isEmpty();
    }

    /** Washer and nut lie against the back of the wall and go with it; other rings stay. */
    @Test
    void partsBehindTheWallGoWithIt() {
        Mount base = mount(
                0,
                wall(FOREVER, FOREVER),
                null,
                ring("washer", 9, 15, -22, -20),
                ring("nut", 9, 14, -26, -22),
                ring("collar", 9, 12, -40, -30));
        List<Part> moved = new Recess(base, true).with(30 * MM, 5 * MM).rings();
        assertSection(moved.get(0), 9, 15, -17, -15);
        assertSection(moved.get(1), 9, 14, -21, -17);
        assertSection(moved.get(2), 9, 12, -40, -30);
    }
}
