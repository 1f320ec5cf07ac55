package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Targets just within what is possible, just beyond it, and what they are called. */
class TargetLimitsTest {

    private static final Materials MATERIALS = ModelFiles.materials();

    @TempDir
    private Path folder;

    private Target read(String keys) {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "t.yaml", "eddyreach: study\ntargets:\n- {name: a, " + keys + "}\n"),
                "study",
                problems);
        List<Target> bound = new TargetReader(MATERIALS, 18e-3).bindAll(root.list("targets"));
        root.finish();
        problems.throwIfAny();
        return bound.get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shape: screw, head diameter: 8.01 mm, head height: 5 mm, shank diameter: 8 mm, shank length: 30 mm, material: fe360"
                        + " | mild steel Fe 360 screw head 8.01 mm by 5 mm, shank 8 mm by 30 mm | 4.005",
                "shape: tube, outer: 10 mm, wall: 4.99 mm, length: 3 mm, material: brass | brass tube 10 mm / 20 µm by 3 mm | 5",
                "shape: tube, outer: 10 mm, inner: 8 mm, length: 3 mm, material: brass, slit: yes | brass tube 10 mm / 8 mm by 3 mm, slit | 5",
                "shape: sphere, diameter: 200 mm, material: brass | brass sphere 200 mm | 100",
                "shape: disc, diameter: 9 mm, thickness: 1 mm, material: brass | brass, 1 mm, disc 9 mm | 4.5",
                "shape: disc, diameter: 9 mm, thickness: 1 mm, material: brass, coating: {material: zinc, thickness: 0.49 mm}"
                        + " | brass disc 9 mm by 1 mm, zinc 0.49 mm all over | 4.5",
                "shape: square, side: 10 mm, thickness: 1 mm, material: brass | brass, 1 mm, square 10 mm | 5.6419",
                "shape: square, side: 18 mm, thickness: 1 mm, material: brass | brass, 1 mm | 10.155",
                "shape: rectangle, width: 10 mm, height: 40 mm, thickness: 20 um, material: brass | brass, 20 µm, rectangle 10 mm by 40 mm | 11.284",
                "shape: rectangle, width: 10 mm, height: 10 mm, thickness: 1 mm, material: brass, offset: 3 mm"
                        + " | brass, 1 mm, rectangle 10 mm by 10 mm, 3 mm off the axis | 5.6419",
                "material: brass, open area: 50 % | brass (50 % open), 1 mm | 10.155",
                "material: brass, temperature: 400 degC | brass, 1 mm at 400 °C | 10.155",
                "material: brass, temperature: -60 degC, label: cold | cold | 10.155",
                "shape: rings, rings: [{material: brass, inner: 2 mm, outer: 8 mm, from: 0 mm, to: 1 mm, slit: yes}]"
                        + " | brass, slit, 8 mm wide and 1 mm deep | 4",
                "shape: rings, rings: [{material: brass, outer: 8 mm, from: 0 mm, to: 1 mm}, {material: zinc, outer: 6 mm, from: 1 mm, to: 3 mm}]"
                        + " | brass and zinc, 8 mm wide and 3 mm deep | 4",
            })
    void namesAndRadii(String keys, String label, double radius) {
        Target t = read(keys);
        assertThat(t.label()).isEqualTo(label);
        assertThat(t.radius()).isCloseTo(radius * 1e-3, within(1e-6));
        assertThat(t.id()).isEqualTo("a");
    }

    @Test
    void anEndlessPlate() {
        assertThat(read("shape: plate, material: brass, thickness: 1 mm").label())
                .isEqualTo("brass, 1 mm, endless plate");
        assertThat(read("shape: plate, material: brass, thickness: 1 mm").radius())
                .isInfinite();
        assertThat(read("material: brass, offset: 2 mm").offset()).isEqualTo(2e-3);
        assertThat(read("material: brass").offset()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shape: tube, outer: 10 mm, wall: 5 mm, length: 3 mm, material: brass | wall: 5 mm is too thick for an outer diameter of 10 mm",
                "shape: tube, outer: 10 mm, wall: 1 mm, inner: 8 mm, length: 3 mm, material: brass | wall: stands beside inner, give one of the two",
                "shape: tube, outer: 10 mm, inner: 10 mm, length: 3 mm, material: brass | inner: 10 mm must be smaller than outer, 10 mm",
                "shape: sphere, diameter: 201 mm, material: brass | diameter: 201 mm is out of range, needs 0.1 mm to 200 mm",
                "shape: square, side: 0.09 mm, material: brass, thickness: 1 mm | side: 0.09 mm is out of range, needs 0.1 mm to",
                "shape: disc, diameter: 9 mm, thickness: 1 mm, material: brass, coating: {material: zinc, thickness: 0.5 mm}"
                        + " | coating.thickness: 0.5 mm on every side leaves nothing of the part, needs less than 0.5 mm",
                "shape: disc, diameter: 9 mm, thickness: 1 mm, material: brass, coating: {material: zink, thickness: 0.1 mm}"
                        + " | coating.material: unknown material \"zink\", did you mean \"zinc\"?",
                "shape: rectangle, width: 10 mm, height: 40.1 mm, thickness: 1 mm, material: brass | height: 40.1 mm is more than 4 times the other side, 10 mm",
                "shape: rectangle, width: 40.1 mm, height: 10 mm, thickness: 1 mm, material: brass | width: 40.1 mm is more than 4 times the other side, 10 mm",
                "material: brass, open area: 51 % | open area: 51 % is out of range, needs 0 % to 50 %",
                "material: brass, open area: 30 %, mesh: {wire: 0.1 mm, pitch: 1 mm} | stands beside",
                "material: brass, layers: [{material: zinc, thickness: 1 mm}], mesh: {wire: 0.1 mm, pitch: 1 mm} | mesh: stands beside layers; a mesh is of one material",
                "material: copper, mesh: {wire: 1 mm, pitch: 1 mm} | pitch: 1 mm from wire to wire leaves no opening between wires of 1 mm",
                "material: brass, temperature: 401 degC | temperature: 401 degC is out of range, needs -60 degC to 400 degC",
                "material: brass, offset: 1.1 m | offset: 1.1 m is out of range, needs 0 mm to 1 m",
                "material: brass, offset: -1 mm | offset: -1 mm is out of range",
                "thickness: 1 mm, layers: [{material: zinc, thickness: 1 mm}] | thickness: stands beside layers, give it in each layer",
                "layers: [{material: zinc, thickness: 1 mm}, {material: zinc}] | layers[2].thickness: missing, needs a length such as 0.6 mm",
                "shape: disc, diameter: 9 mm, thickness: 1 mm, material: brass, open area: 30 %, coating: {material: zinc, thickness: 0.1 mm}"
                        + " | open area: stands beside coating, give one of the two",
                "shape: disc, diameter: 9 mm, layers: [{material: zinc, thickness: 1 mm}], coating: {material: zinc, thickness: 0.1 mm}"
                        + " | coating: stands beside layers: layers cover the front, a coating every side of one material",
                "shape: rings, material: brass, rings: [{material: brass, outer: 8 mm, from: 0 mm, to: 1 mm}]"
                        + " | material: stands beside rings, give it in each ring",
                "layers: [] | the list is empty; give an entry or leave the key out",
                "shape: rings, rings: [] | the list is empty",
                "shape: rings, rings: [five] | rings[1]: got \"five\", needs a group of keys",
                "shape: rings, rings: [{material: brass, outer: 8 mm, from: 0 mm, to: 1 mm}, {material: zinc, outer: 6 mm, from: 2 mm, to: 3 mm}]"
                        + " | touches no other ring, the nearest being ring 1, 1 mm away",
                "shape: rings, rings: [{material: brass, outer: 8 mm, from: 0 mm, to: 1 mm},"
                        + " {material: zinc, inner: 4 mm, outer: 6 mm, from: 1 mm, to: 3 mm, slit: yes}] | slit: is bridged by ring 1",
            })
    void justNot(String keys, String message) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(keys));
        assertThat(ModelFiles.message(e, folder)).contains(message);
    }

    @Test
    void upToTwelveLayersAndFortyRings() {
        String layer = "{material: zinc, thickness: 1 mm}";
        assertThat(read("layers: [" + (layer + ", ").repeat(11) + layer + "]").layers())
                .hasSize(12);
        InputException e = catchThrowableOfType(
                InputException.class, () -> read("layers: [" + (layer + ", ").repeat(12) + layer + "]"));
        assertThat(e.getMessage()).contains("layers: more than 12 layers");
        StringBuilder rings = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            rings.append("{material: zinc, outer: 8 mm, from: " + i + " mm, to: " + (i + 1) + " mm}, ");
        }
        assertThat(read("shape: rings, rings: [" + rings + "]").parts()).hasSize(40);
        rings.append("{material: zinc, outer: 8 mm, from: 40 mm, to: 41 mm}");
        e = catchThrowableOfType(InputException.class, () -> read("shape: rings, rings: [" + rings + "]"));
        assertThat(e.getMessage()).contains("rings: more than 40 rings");
    }

    /** A slit ring that touches only what does not conduct, or what is slit too, stays open. */
    @Test
    void aSlitIsBridgedByMetalOnly() {
        String slit = "{material: zinc, inner: 4 mm, outer: 6 mm, from: 1 mm, to: 3 mm, slit: yes}";
        assertThat(read("shape: rings, rings: [{material: plastic, outer: 8 mm, from: 0 mm, to: 1 mm}, " + slit + "]")
                        .parts())
                .hasSize(2);
        assertThat(
                        read("shape: rings, rings: [{material: zinc, inner: 4 mm, outer: 8 mm, from: 0 mm, to: 1 mm, slit: yes}, "
                                        + slit + "]")
                                .parts())
                .hasSize(2);
    }

    @Test
    void listsOfMaterials() {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "t.yaml", "eddyreach: study\nmetals: [brass, zink, zinc, brass]\n"),
                "study",
                problems);
        List<Target> bound = new TargetReader(MATERIALS, 18e-3)
                .bindMaterials(root.list("metals"), 2e-3, new Target.Outline.Disc(20e-3));
        assertThat(bound).extracting(Target::id).containsExactly("brass", "zinc", "brass");
        assertThat(bound.get(1).label()).isEqualTo("zinc, 2 mm, disc 20 mm");
        assertThat(bound.get(1).thickness()).isEqualTo(2e-3);
        InputException e = catchThrowableOfType(InputException.class, problems::throwIfAny);
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                t.yaml:2:17 metals[2]: unknown material "zink", did you mean "zinc"?
                t.yaml:2:29 metals[4]: "brass" stands twice in the list""");
    }

    @Test
    void someStudiesTakeTargetsOnTheAxisOnly() {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(
                        folder,
                        "t.yaml",
                        "eddyreach: study\ntargets: [{name: a, material: zinc, offset: 1 mm}, {name: b, material: zinc}]\n"),
                "study",
                problems);
        assertThat(new TargetReader(MATERIALS, 18e-3).bindOnAxis(root)).hasSize(2);
        InputException e = catchThrowableOfType(InputException.class, problems::throwIfAny);
        assertThat(ModelFiles.message(e, folder))
                .isEqualTo("t.yaml:2:45 targets[1].offset: in a study of this kind targets stand on the axis");
        Problems none = new Problems();
        Node empty = YamlTree.open(ModelFiles.write(folder, "e.yaml", "eddyreach: study\n"), "study", none);
        assertThat(new TargetReader(MATERIALS, 18e-3).bindOnAxis(empty)).isEmpty();
        empty.finish();
        none.throwIfAny();
    }
}
