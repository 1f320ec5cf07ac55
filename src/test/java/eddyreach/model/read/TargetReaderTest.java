package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.materials.Material;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.values.ThicknessTolerance;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TargetReaderTest {

    private static final Materials MATERIALS = ModelFiles.materials();

    @TempDir
    private Path folder;

    private List<Target> read(String targets) {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "t.yaml", "eddyreach: study\ntargets:\n" + targets), "study", problems);
        List<Target> bound = new TargetReader(MATERIALS, 18e-3).bindAll(root.list("targets"));
        root.finish();
        problems.throwIfAny();
        return bound;
    }

    /** As stated, in percent or as a length, or what is usual for the product. */
    @Test
    void tolerancesOfThickness() {
        List<Target> targets = read("""
                - {name: a, material: aluminium, thickness: 10 um}
                - {name: b, material: fe360, thickness tolerance: 0.05 mm}
                - {name: c, material: fe360, thickness tolerance: 0}
                - name: d
                  layers:
                    - {material: paper, thickness: 0.1 mm}
                    - {material: zinc, thickness: 8 um}
                    - {material: fe360, thickness: 2 mm, thickness tolerance: 3 %}
                - {name: e, material: copper, shape: sphere, diameter: 8 mm}
                """);
        assertThat(targets.get(0).tolerances())
                .containsExactly(new ThicknessTolerance(0.08, ThicknessTolerance.Origin.FOIL));
        assertThat(targets.get(1).tolerances()).hasSize(1);
        assertThat(targets.get(1).tolerances().get(0).share()).isCloseTo(0.05, within(1e-12));
        assertThat(targets.get(2).tolerances()).containsExactly(ThicknessTolerance.stated(0));
        assertThat(targets.get(3).tolerances())
                .containsExactly(
                        new ThicknessTolerance(0.1, ThicknessTolerance.Origin.FILM),
                        new ThicknessTolerance(0.3, ThicknessTolerance.Origin.PLATING),
                        ThicknessTolerance.stated(0.03));
        assertThat(targets.get(4).tolerances()).isEmpty();
        InputException e = catchThrowableOfType(InputException.class, () -> read("""
                - {name: a, material: fe360, thickness tolerance: -5 %}
                - {name: b, material: fe360, thickness tolerance: 120 %}
                - {name: c, material: fe360, thickness tolerance: 2 mm}
                - {name: d, material: copper, shape: sphere, diameter: 8 mm, thickness tolerance: 5 %}
                """));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                        t.yaml:3:51 targets[1].thickness tolerance: -5 % is out of range, needs 0 % to 90 %
                        t.yaml:4:51 targets[2].thickness tolerance: 120 % is out of range, needs 0 % to 90 %
                        t.yaml:5:51 targets[3].thickness tolerance: 2 mm is out of range, needs 0 mm to 0.9 mm
                        t.yaml:6:83 targets[4].thickness tolerance: goes only with flat parts without a coating all over; other sizes are as stated""");
    }

    @Test
    void shapesAndLayers() {
        List<Target> targets = read("""
                - name: standard
                  material: fe360
                - name: thin
                  material: aluminium-foil
                  thickness: 10 um
                  shape: standard
                - name: slug
                  label: a slug
                  shape: disc
                  diameter: 4 mm
                  material: brass
                  thickness: 2 mm
                - name: plated
                  shape: square
                  side: 20 mm
                  layers:
                    - {material: zinc, thickness: 8 um}
                    - {material: fe360, thickness: 3 mm}
                - name: wall
                  shape: plate
                  material: copper
                  thickness: 1 mm
                """);
        assertThat(targets).extracting(Target::id).containsExactly("standard", "thin", "slug", "plated", "wall");
        assertThat(targets.get(0).sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Square(18e-3));
        assertThat(targets.get(0).thickness()).isEqualTo(1e-3);
        assertThat(targets.get(0).label()).isEqualTo("mild steel Fe 360, 1 mm");
        assertThat(targets.get(1).thickness()).isEqualTo(10e-6);
        assertThat(targets.get(2).sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Disc(4e-3));
        assertThat(targets.get(2).label()).isEqualTo("a slug");
        assertThat(targets.get(3).layers()).extracting(l -> l.material().id()).containsExactly("zinc", "fe360");
        assertThat(targets.get(3).thickness()).isCloseTo(3.008e-3, within(1e-15));
        assertThat(targets.get(4).sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Endless());
    }

    @Test
    void aPartMayBeHotOrCold() {
        List<Target> targets = read("""
                - {name: hot, material: copper, temperature: 220 °C}
                - {name: ball, shape: sphere, diameter: 8 mm, material: fe360, temperature: -40 degC}
                - {name: board, layers: [{material: aluminium-foil, thickness: 10 um}, {material: paper, thickness: 1 mm}], temperature: 373.15 K}
                """);
        Material hot = targets.get(0).layers().get(0).material();
        // 58 MS/m by 0.393 %/K over 200 K
        assertThat(hot.conductivity(-25)).isEqualTo(hot.conductivity(70)).isCloseTo(58e6 / 1.786, within(1.0));
        assertThat(targets.get(0).label()).isEqualTo("copper, 1 mm at 220 °C");
        Material cold = targets.get(1).body().materials().get(0);
        assertThat(cold.conductivity20()).isEqualTo(MATERIALS.get("fe360").conductivity20());
        assertThat(cold.conductivity(20)).isGreaterThan(cold.conductivity20());
        assertThat(cold.muReal()).isEqualTo(150);
        assertThat(targets.get(2).layers())
                .extracting(l -> l.material().id())
                .containsExactly("aluminium-foil-at-100", "paper");
        assertThatThrownBy(() -> read("- {name: a, material: copper, temperature: 500 degC}"))
                .hasMessageEndingWith("temperature: 500 degC is out of range, needs -60 degC to 400 degC");
    }

    @Test
    void theStandardTargetFollowsTheSwitch() {
        SwitchModel m = SwitchReader.read(new SourceFile.OnDisk(ModelFiles.REFERENCE), MATERIALS);
        Target t = TargetReader.standard(MATERIALS.get(Materials.STANDARD_STEEL), m);
        assertThat(t.sheet().orElseThrow().outline()).isEqualTo(new Target.Outline.Square(18e-3));
        assertThat(t.thickness()).isEqualTo(1e-3);
    }

    @Test
    void errors() {
        InputException e = catchThrowableOfType(InputException.class, () -> read("""
                        - name: A b
                          material: stel
                          thickness: 0 mm
                          shape: plate
                        - name: disc
                          material: brass
                          shape: disc
                        - name: both
                          material: brass
                          layers: [{material: zinc}]
                          side: 3 mm
                        - name: blob
                          material: brass
                          shape: blob
                          thickness: 1 mm
                        - five
                        - {name: x, material: tin}
                        - {name: x, material: tin}
                        """));
        assertThat(ModelFiles.message(e, folder)).isEqualTo("""
                        t.yaml:3:9 targets[1].name: a target's name has 1 to 40 small letters, digits and hyphens; put\
                         more in label
                        t.yaml:4:13 targets[1].material: unknown material "stel", needs an id of\
                         shared/materials.yaml such as fe360
                        t.yaml:5:14 targets[1].thickness: 0 mm is out of range, needs 1 nm to 1 m
                        t.yaml:7:3 targets[2].diameter: missing, needs a length such as 0.6 mm
                        t.yaml:7:3 targets[2].thickness: missing, needs a length such as 0.6 mm
                        t.yaml:11:13 targets[3].material: stands beside layers, give it in each layer
                        t.yaml:12:12 targets[3].layers[1].thickness: missing, needs a length such as 0.6 mm
                        t.yaml:13:9 targets[3].side: goes only with the shape square
                        t.yaml:16:10 targets[4].shape: got "blob", needs cylinder, disc, plate, rectangle, rings, screw,\
                         sphere, square, standard, tube or washer
                        t.yaml:18:3 targets[5]: got "five", needs a group of keys
                        t.yaml:20:10 targets[7].name: "x" names another target already""");
    }
}
