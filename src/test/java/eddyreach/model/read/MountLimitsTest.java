package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Section;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.YamlTree;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mounts just within what is possible for an M18 of 40 mm length, and just beyond it. */
class MountLimitsTest {

    private static final Materials MATERIALS = ModelFiles.materials();
    private static final SwitchModel M18 = new Library(Path.of("")).switchModel("m18-flush");
    private static final String WALL = "wall: {material: fe360, thickness: 9 mm}";

    @TempDir
    private Path folder;

    private Optional<Mount> read(String keys, Optional<SwitchModel> model) {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "m.yaml", "eddyreach: mount\nm: {" + keys + "}\n"), "mount", problems);
        Optional<Mount> mount =
                new MountReader(MATERIALS, model).bindInline(root.map("m").orElseThrow());
        root.finish();
        problems.throwIfAny();
        return mount;
    }

    private Mount read(String keys) {
        return read("name: m, " + keys, Optional.of(M18)).orElseThrow();
    }

    private String failure(String keys) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(keys, Optional.of(M18)));
        assertThat(e).as(keys).isNotNull();
        return ModelFiles.message(e, folder);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name: M 18 | m.yaml:2:11 m.name: a mount's name has 1 to 40 small letters, digits and hyphens; put more in label",
                "name: m, wall: {material: fe360, thickness: 9 mm, diameter: 20 mm} | m.wall.diameter: 20 mm must be larger than the bore, 20 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, recess: {diameter: 20 mm, depth: 4 mm}} | 20 mm must be larger than the bore, 20 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, recess: {diameter: 30 mm, depth: 4 mm}, steps: [{diameter: 30 mm, depth: 4 mm}]}"
                        + " | m.wall.steps: stands beside recess; give one of them, or all as steps",
                "name: m, wall: {material: fe360, thickness: 9 mm, recess: {diameter: 30 mm, depth: 4 mm}, countersink: {diameter: 30 mm, depth: 4 mm}}"
                        + " | m.wall.countersink: stands beside recess",
                "name: m, wall: {material: fe360, thickness: 9 mm, steps: [{diameter: 30 mm, depth: 2 mm}, {diameter: 30 mm, depth: 4 mm}]}"
                        + " | 30 mm must be smaller than that of the step above, 30 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, steps: [{diameter: 30 mm, depth: 2 mm}, {diameter: 28 mm, depth: 2 mm}]}"
                        + " | depth: 2 mm must be larger than that of the step above, 2 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, countersink: {diameter: 30 mm, depth: 4 mm, to: 30 mm}}"
                        + " | 30 mm must be larger than what it narrows to, 30 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, countersink: {diameter: 30 mm, depth: 4 mm, to: 19 mm}}"
                        + " | to: 19 mm must not be smaller than the bore, 20 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, edge: 10 mm} | 10 mm from the axis, but the bore of 20 mm reaches 10 mm from it",
                "name: m, wall: {material: fe360, thickness: 9 mm, recess: {diameter: 36 mm, depth: 5 mm}, edge: 18 mm}"
                        + " | 18 mm from the axis, but the opening of 36 mm reaches 18 mm from it",
                "name: m, wall: {material: fe360, thickness: 9 mm, hole: tapped, bore: 20 mm} | m.wall.hole: stands beside bore; give one of them",
                "name: m, wall: {material: fe360, thickness: 9 mm, hole: drilled} | m.wall.hole: got \"drilled\", needs clearance or tapped",
                "name: m, wall: {material: fe360, thickness: 9 mm, bore: 361 mm} | bore: 361 mm is out of range, needs 10 um to 360 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm, diameter: 361 mm} | diameter: 361 mm is out of range, needs 10 um to 360 mm",
                "name: m, wall: {material: fe360, thickness: 9 mm}, washer: {material: zinc, diameter: 17 mm, thickness: 1 mm}"
                        + " | m.washer.diameter: 17 mm must be larger than the body of the switch, 17.35 mm",
                "name: m, sunk by: 181 mm | m.sunk by: 181 mm is out of range, needs 0 mm to 180 mm",
                "name: m, proud by: 40 mm, wall: {material: fe360, thickness: 9 mm} | m.proud by: 40 mm but the switch is only 40 mm long",
                "name: m, rings: [{name: a, material: fe360, inner diameter: 30 mm, outer diameter: 30 mm, front: 0 mm, back: 5 mm}]"
                        + " | outer diameter: 30 mm must be larger than inner diameter, 30 mm",
                "name: m, rings: [{name: a, material: fe360, inner diameter: 30 mm, outer diameter: 40 mm, front: 5 mm, back: 5 mm}]"
                        + " | back: 5 mm must be larger than front, 5 mm",
                "name: m, rings: [{name: a, material: fe360, inner diameter: 30 mm, outer diameter: 40 mm, front: 0 mm, back: 5 mm},"
                        + " {name: a, material: fe360, inner diameter: 50 mm, outer diameter: 60 mm, front: 0 mm, back: 5 mm}]"
                        + " | rings[2].name: \"a\" names another part already",
                "name: m, sunk by: 5 mm, wall: {material: fe360, thickness: 9 mm}, cover: {material: plastic, distance: 6 mm, thickness: 1 mm},"
                        + " background: {material: fe360, distance: 7 mm, thickness: 2 mm}"
                        + " | background: stands 7 mm before the face, inside the mount, which reaches up to 7 mm",
            })
    void justNot(String keys, String message) {
        assertThat(failure(keys)).contains(message);
    }

    @Test
    void justPossible() {
        assertThat(read("wall: {material: fe360, thickness: 9 mm, diameter: 20.1 mm}")
                        .wall())
                .isPresent();
        assertThat(read("wall: {material: fe360, thickness: 9 mm, hole: tapped}")
                        .wall()
                        .orElseThrow()
                        .bore())
                .as("as wide as the body")
                .isCloseTo(M18.bodyDiameter(), within(1e-12));
        assertThat(read(WALL).wall().orElseThrow().bore())
                .as("as wide as the clearance hole")
                .isEqualTo(M18.clearanceHole());
        assertThat(read("wall: {material: fe360, thickness: 60 mm, recess: {diameter: 30 mm, depth: 40 mm}}")
                        .wall()
                        .orElseThrow()
                        .openings())
                .as("down to the switch's end")
                .hasSize(1);
        assertThat(
                        read("sunk by: 10 mm, wall: {material: fe360, thickness: 60 mm, recess: {diameter: 30 mm, depth: 50 mm}}")
                                .wall())
                .isPresent();
        assertThat(read("wall: {material: fe360, thickness: 9 mm, countersink: {diameter: 30 mm, depth: 4 mm}}")
                        .wall()
                        .orElseThrow()
                        .openings())
                .as("down to the bore")
                .containsExactly(new Mount.Opening(30e-3, M18.clearanceHole(), 0, 4e-3));
        assertThat(read("wall: {material: fe360, thickness: 9 mm, edge: 10.1 mm}")
                        .edged())
                .isTrue();
        assertThat(read("proud by: 39 mm, " + WALL).surface()).isEqualTo(-39e-3);
        assertThat(read("sunk by: 180 mm").surface()).isCloseTo(0.18, within(1e-15));
        assertThat(read("cover: {material: plastic, distance: 0 mm, thickness: 1 mm, diameter: 20 mm}")
                        .cover()
                        .orElseThrow())
                .isEqualTo(new Mount.Cover(MATERIALS.get("plastic"), 0, 1e-3, 20e-3));
        assertThat(read("background: {material: fe360, distance: 7 mm, thickness: 2 mm, diameter: 30 mm}")
                        .background()
                        .orElseThrow())
                .isEqualTo(new Mount.Standing(new Mount.Background(MATERIALS.get("fe360"), 2e-3, 30e-3), 7e-3));
    }

    @Test
    void partsLieWhereTheFileSays() {
        Mount m = read(
                WALL + ", washer: {material: zinc, diameter: 30 mm, thickness: 2 mm},"
                        + " nut: {material: brass, across corners: 27 mm, height: 4 mm},"
                        + " rings: [{name: collar, material: fe360, inner diameter: 30 mm, outer diameter: 40 mm, front: -3 mm, back: -1 mm}]");
        double body = M18.bodyDiameter() / 2;
        assertSection(m.rings().get(0).section(), body, 15e-3, -11e-3, -9e-3);
        assertSection(m.rings().get(1).section(), body, 13.5e-3, -15e-3, -11e-3);
        assertSection(m.rings().get(2).section(), 15e-3, 20e-3, 1e-3, 3e-3);
        assertThat(m.name()).as("without a label").isEqualTo("m");
        assertThat(read("label: a nice one, " + WALL).name()).isEqualTo("a nice one");
        Mount nut = read(WALL + ", nut: {material: brass, across corners: 27 mm, height: 4 mm}");
        assertSection(nut.rings().get(0).section(), body, 13.5e-3, -13e-3, -9e-3);
    }

    private static void assertSection(Section s, double r0, double r1, double z0, double z1) {
        assertThat(new double[] {s.r0(), s.r1(), s.z0(), s.z1()})
                .containsExactly(new double[] {r0, r1, z0, z1}, within(1e-12));
    }

    /** A file is checked as far as it can be without the switch. */
    @Test
    void withoutASwitch() {
        assertThat(read("name: m, " + WALL, Optional.empty())).isEmpty();
        InputException e = catchThrowableOfType(
                InputException.class, () -> read("name: m, wall: {material: fe36, thickness: 9 mm}", Optional.empty()));
        assertThat(e.getMessage()).contains("unknown material \"fe36\", did you mean \"fe360\"?");
        e = catchThrowableOfType(
                InputException.class,
                () -> MountReader.read(
                        ModelFiles.write(folder, "w.yaml", "eddyreach: mount\nname: a\nwal: {}\n"),
                        MATERIALS,
                        Optional.empty()));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("w.yaml:3:1 wal: unknown key, did you mean \"wall\"?");
        assertThat(new Library(Path.of("")).mountName("steel-recess-36")).isNotBlank();
    }
}
