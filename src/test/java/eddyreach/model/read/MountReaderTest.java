package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.kinds.mount.MountInput;
import eddyreach.model.values.MetricThread;
import eddyreach.model.values.Mount;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.FileCheck;
import eddyreach.studies.StudyReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MountReaderTest {

    private static final String STUDY = """
            eddyreach: study
            name: mounts
            kind: mount
            switch: m18-flush
            mounts:
              - MOUNT
            """;

    @TempDir
    private Path folder;

    private MountInput read(String text) {
        return (MountInput) StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    private Mount mount(String keys) {
        return read(STUDY.replace("MOUNT", "{name: m, " + keys + "}")).mounts().get(0);
    }

    private static List<Part> parts(Mount m) {
        return m.parts(7e-3);
    }

    @Test
    void aSunkSwitchInARecessWithWasherAndNut() {
        Mount m = mount(
                "sunk by: 4 mm, wall: {material: fe360, thickness: 20 mm, recess: {diameter: 36 mm, depth: 10 mm}},"
                        + " washer: {material: zinc, diameter: 30 mm, thickness: 2 mm},"
                        + " nut: {material: brass, across corners: 27 mm, height: 4 mm}");
        assertThat(parts(m)).extracting(Part::name).containsExactly("wall", "wall 2", "washer", "nut");
        assertThat(parts(m).get(0).section().r0()).isEqualTo(18e-3);
        assertThat(parts(m).get(0).section().z1()).isEqualTo(4e-3);
        assertThat(parts(m).get(1).section().r0()).as("an M18 passes it").isEqualTo(10e-3);
        assertThat(parts(m).get(3).section().z0()).isCloseTo(-22e-3, within(1e-12));
        assertThat(parts(m).get(0).section().r1()).as("cut").isCloseTo(39e-3, within(1e-12));
        assertThat(m.floor(17e-3)).as("fits into the recess").isZero();
        assertThat(m.floor(19e-3)).isCloseTo(4e-3, within(1e-12));
    }

    @Test
    void aConeIsOneRingThatLeansAndLetsATargetInAsFarAsItIsWide() {
        Mount m = mount("sunk by: 6 mm, wall: {material: aluminium, thickness: 20 mm,"
                + " countersink: {diameter: 40 mm, depth: 10 mm, to: 20 mm}}");
        Section cone = parts(m).get(0).section();
        assertThat(cone.innerAt(-4e-3)).as("where it ends").isCloseTo(10e-3, within(1e-12));
        assertThat(cone.innerAt(1e-3)).as("half way up").isCloseTo(15e-3, within(1e-12));
        assertThat(cone.innerAt(6e-3)).as("at the surface").isCloseTo(20e-3, within(1e-12));
        assertThat(m.clearance(1e-3, 2e-3)).isCloseTo(30e-3, within(1e-12));
        assertThat(m.floor(15e-3)).as("half way down the cone").isCloseTo(1e-3, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wall: {material: fe360, thickness: 9 mm, bore: 17 mm} | 17 mm is narrower than the body of the switch, 17.35 mm",
                "wall: {material: fe360, thickness: 9 mm, recess: {diameter: 30 mm, depth: 9 mm}}"
                        + " | 9 mm: the plate is not thicker than its recess is deep, 9 mm",
                "wall: {material: fe360, thickness: 60 mm, recess: {diameter: 30 mm, depth: 50 mm}}"
                        + " | the recess reaches 50 mm behind the active face, but the switch ends at 40 mm",
                "wall: {material: fe360, thickness: 9 mm, recess: {diameter: 16 mm, depth: 5 mm}}"
                        + " | 16 mm must be larger than the bore, 20 mm",
                "proud by: 41 mm, wall: {material: fe360, thickness: 9 mm} | 41 mm but the switch is only 40 mm long",
                "sunk by: 5 mm, proud by: 2 mm | 5 mm beside proud by 2 mm: a switch is one or the other, or flush",
                "sunk by: 5 mm, wall: {material: fe360, thickness: 9 mm}, cover: {material: plastic, distance: 2 mm, thickness: 1 mm}"
                        + " | \"cover\" (diameter 0 mm to 70.25 mm, 3 mm in front of the face to 2 mm in front of the face) overlaps"
                        + " \"wall\" (diameter 20 mm to 62.15 mm, 5 mm in front of the face to 4 mm behind the face)",
                "rings: [{name: a, material: fe360, inner diameter: 10 mm, outer diameter: 30 mm, front: 0 mm, back: 5 mm}]"
                        + " | \"a\" (diameter 10 mm to 30 mm, 0 mm behind the face to 5 mm behind the face) overlaps \"core rim\"",
                "nut: {material: fe360, across corners: 27 mm, height: 4 mm}"
                        + " | stands at the back of the wall, but there is no wall",
                "wall: {material: fe360, thickness: 9 mm, diameter: 20 mm, recess: {diameter: 30 mm, depth: 5 mm}}"
                        + " | 20 mm must be larger than the opening in it, 30 mm",
                "wall: {material: fe360, thickness: 9 mm, steps: [{diameter: 30 mm, depth: 2 mm}, {diameter: 32 mm, depth: 1 mm}]}"
                        + " | 32 mm must be smaller than that of the step above, 30 mm",
                "wall: {material: fe360, thickness: 9 mm, edge: 8 mm}"
                        + " | 8 mm from the axis, but the bore of 20 mm reaches 10 mm from it",
                "wall: {material: fe360, thickness: 9 mm, recess: {diameter: 36 mm, depth: 5 mm}, edge: 15 mm}"
                        + " | 15 mm from the axis, but the opening of 36 mm reaches 18 mm from it",
                "wall: {material: fe360, thickness: 9 mm, diameter: 40 mm, edge: 20 mm}"
                        + " | 20 mm from the axis lies outside the wall, whose diameter of 40 mm ends at 20 mm",
                "background: {material: fe360, distance: 0.5 mm, thickness: 2 mm} | which leaves no room for target \"fe360\""
            })
    void badInputNamesBothDimensions(String keys, String message) {
        String text = STUDY.replace("MOUNT", "{name: m, " + keys + "}") + "targets: [{name: fe360, material: fe360}]\n";
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(message)
                .hasMessageMatching("(?s).*s\\.yaml:[1-9][0-9]*:[1-9][0-9]* .*");
    }

    @Test
    void aStraightEdgeLiesBetweenAWallWithoutItAndARoundOne() {
        String wall = "proud by: 3 mm, wall: {material: fe360, thickness: 4 mm, diameter: 60 mm, edge: 12 mm}";
        Mount m = mount(wall);
        assertThat(m.edged()).isTrue();
        assertThat(m.bounds()).noneMatch(Mount::edged);
        assertThat(m.bounds())
                .extracting(b -> b.wall().orElseThrow().diameter())
                .containsExactly(60e-3, 24e-3);
        assertThat(m.bounds()).extracting(b -> parts(b).get(0).section().r1()).containsExactly(30e-3, 12e-3);
        Mount without = mount(wall.replace(", edge: 12 mm", ""));
        assertThat(without.bounds()).containsExactly(without);
        String background = STUDY.replace("kind: mount", "kind: background")
                .replace(
                        "mounts:\n  - MOUNT",
                        "mount: {name: m, " + wall + "}\nbackground: {material: fe360, thickness: 2 mm}");
        assertThatThrownBy(() ->
                        StudyReader.read(ModelFiles.write(folder, "b.yaml", background), new Library(Path.of(""))))
                .hasMessageContaining("ends at a straight edge 12 mm beside the switch");
    }

    /** ISO 273, medium: 20 mm for M18, 13.5 mm for M12; a tapped hole is a smooth bore of the pitch diameter. */
    @Test
    void theHoleIsThatOfTheThread() {
        String wall = "wall: {material: fe360, thickness: 9 mm%s}";
        assertThat(bore(mount(wall.formatted("")))).isEqualTo(20e-3);
        assertThat(bore(mount(wall.formatted(", hole: clearance")))).isEqualTo(20e-3);
        assertThat(bore(mount(wall.formatted(", hole: tapped")))).isCloseTo(17.35e-3, within(1e-12));
        assertThat(bore(mount(wall.formatted(", bore: 18.5 mm")))).isEqualTo(18.5e-3);
        String both = STUDY.replace("MOUNT", "{name: m, " + wall.formatted(", hole: tapped, bore: 19 mm") + "}");
        assertThatThrownBy(() -> read(both)).hasMessageContaining("hole: stands beside bore; give one of them");
        String smooth = STUDY.replace("MOUNT", "{name: m, " + wall.formatted(", hole: tapped") + "}")
                .replace("m18-flush", "block40-flush");
        assertThatThrownBy(() -> read(smooth))
                .hasMessageContaining("hole: tapped, but the body of the switch has no thread");
        assertThat(MetricThread.of("M12x1").orElseThrow().clearance()).isEqualTo(13.5e-3);
        assertThat(MetricThread.of("M30 x 1.5").orElseThrow().text()).isEqualTo("M30 x 1.5");
        assertThat(MetricThread.of("M17 x 1")).isEmpty();
        assertThat(MetricThread.of("M18")).isEmpty();
    }

    private static double bore(Mount m) {
        return m.wall().orElseThrow().bore();
    }

    /** A second row of free air would have the same name and the same pictures. */
    @Test
    void noMountIsCalledFreeAir() {
        String text = STUDY.replace("MOUNT", "{name: free-air, wall: {material: fe360, thickness: 9 mm}}");
        assertThatThrownBy(() -> read(text)).hasMessageContaining("is the name of the row without a mount");
        String single = text.replace("mounts:\n  - ", "mount: ");
        assertThat(single).contains("\nmount: {name");
        assertThatThrownBy(() -> read(single)).hasMessageContaining("is the name of the row without a mount");
    }

    /** Pictures are named after the mount's file, whatever that is called. */
    @Test
    void aFileOfAnyNameGivesASafeId() {
        ModelFiles.write(folder, "=my mount #1.yaml", """
                eddyreach: mount
                name: odd name
                wall: {material: fe360, thickness: 9 mm}
                """);
        assertThat(read(STUDY.replace("MOUNT", "\"=my mount #1.yaml\""))
                        .mounts()
                        .get(0)
                        .id())
                .isEqualTo("my-mount-1");
    }

    @Test
    void aTargetWiderThanTheRecessCannotBeAskedForInside() {
        String text = STUDY.replace(
                        "MOUNT",
                        "{name: m, sunk by: 4 mm, wall: {material: fe360, thickness: 20 mm, recess: {diameter: 21 mm, depth: 9 mm}}}")
                + "distances: {from: 1 mm, to: 9 mm}\ntargets: [{name: t, material: fe360}]\n";
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(
                        "from 1 mm: target \"t\" measures 25.4558 mm across and mount \"m\" leaves 21 mm there;"
                                + " it comes no nearer than 4 mm");
        assertThat(read(text.replace("from: 1 mm, ", "")).mounts()).hasSize(1);
    }

    @Test
    void besideTheAxisOnlyWhatStaysAboveTheMetal() {
        String target = "targets: [{name: a, material: fe360, offset: 7 mm}]\n";
        MountInput level = read(STUDY.replace("MOUNT", "{name: m, wall: {material: fe360, thickness: 9 mm}}") + target);
        assertThat(level.targets().get(0).offset()).isEqualTo(7e-3);
        for (String mount : List.of(
                "{name: m, sunk by: 1 mm, wall: {material: fe360, thickness: 9 mm, recess: {diameter: 40 mm, depth: 2 mm}}}",
                "{name: m, background: {material: fe360, distance: 40 mm, thickness: 5 mm}}")) {
            assertThatThrownBy(() -> read(STUDY.replace("MOUNT", mount) + target))
                    .hasMessageEndingWith(
                            "mounts: target \"a\" stands 7 mm beside the axis: that cannot be computed inside the"
                                    + " metal of mount \"m\" nor before a background");
        }
        for (String keys : List.of(
                "kind: background\nbackground: {material: fe360, thickness: 5 mm}\n",
                "kind: recess\nwall: {materials: [fe360], thickness: 20 mm}\n",
                "kind: neighbour\narrangement: face to face\n")) {
            String study = "eddyreach: study\nname: a\nswitch: m18-flush\n" + keys + target;
            assertThatThrownBy(
                            () -> StudyReader.read(ModelFiles.write(folder, "s.yaml", study), new Library(Path.of(""))))
                    .hasMessageEndingWith("targets[1].offset: in a study of this kind targets stand on the axis");
        }
    }

    @Test
    void aBallIsRefusedWhereItCannotBeComputed() {
        String text = STUDY.replace(
                        "MOUNT",
                        "{name: m, sunk by: 4 mm, wall: {material: fe360, thickness: 20 mm, recess: {diameter: 30 mm, depth: 9 mm}}}")
                + "targets: [{name: t, material: fe360, shape: sphere, diameter: 12 mm}]\n";
        assertThat(read(text).targets()).hasSize(1);
        String before = text.replace(
                "sunk by: 4 mm", "background: {material: fe360, distance: 40 mm, thickness: 2 mm}, sunk by: 4 mm");
        assertThatThrownBy(() -> read(before)).hasMessageContaining("target \"t\" is a ball");
        String behind = "eddyreach: study\nname: a\nswitch: m18-flush\nkind: background\n"
                + "background: {material: fe360, thickness: 5 mm}\n"
                + "targets: [{name: t, material: fe360, shape: sphere, diameter: 12 mm}]\n";
        assertThatThrownBy(() -> StudyReader.read(ModelFiles.write(folder, "s.yaml", behind), new Library(Path.of(""))))
                .hasMessageEndingWith("targets: \"t\" is a ball, which cannot be computed before a background");
    }

    @Test
    void everythingIsToldAtOnce() {
        String text = STUDY.replace(
                "MOUNT",
                "{name: m, sunk by: 4 kg, wall: {material: steal, thickness: 9 mm, bore: 3 mm}, cower: {material: plastic}}\n"
                        + "  - nothing-like-it");
        assertThatThrownBy(() -> read(text))
                .isInstanceOfSatisfying(
                        InputException.class, e -> assertThat(e.problems()).hasSize(5));
    }

    @Test
    void aMountsFileIsFoundByItsIdCheckedAndListedApartFromSwitches() {
        Library library = new Library(Path.of(""));
        assertThat(library.mounts()).contains("steel-recess-36").doesNotContain("m18-flush");
        assertThat(library.switches()).contains("m18-flush").doesNotContain("steel-recess-36");
        assertThat(FileCheck.check(library.file("steel-recess-36"), library)).isEqualTo(FileCheck.Kind.MOUNT);
        Mount m = read(STUDY.replace("MOUNT", "steel-recess-36")).mounts().get(0);
        assertThat(m.name()).isEqualTo(library.mountName("steel-recess-36"));
        String bad =
                ModelFiles.text(Path.of("models/steel-recess-36.yaml")).replace("thickness: 20 mm", "thickness: 8 mm");
        SourceFile file = ModelFiles.write(folder, "bad.yaml", bad);
        assertThatThrownBy(() -> FileCheck.check(file, library))
                .hasMessageContaining("8 mm: the plate is not thicker than its recess is deep, 10 mm");
        assertThatThrownBy(() -> read(STUDY.replace("MOUNT", "./bad.yaml")))
                .hasMessageContaining("bad.yaml:")
                .hasMessageContaining("8 mm: the plate is not thicker than its recess is deep, 10 mm");
    }
}
