package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.TanhPair;
import eddyreach.switching.OutputFunction;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SwitchReaderTest {

    private static final Materials MATERIALS = ModelFiles.materials();
    private static final String TEXT = ModelFiles.referenceWithShortNote();

    @TempDir
    private Path folder;

    private SwitchModel read(String text) {
        return SwitchReader.read(ModelFiles.write(folder, "s.yaml", text), MATERIALS);
    }

    private String failure(String text) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(text));
        return e == null ? "" : ModelFiles.message(e, folder);
    }

    private static void assertSection(Part part, double r0, double r1, double z0, double z1) {
        Section s = part.section();
        assertThat(new double[] {s.r0(), s.r1(), s.z0(), s.z1()})
                .containsExactly(new double[] {r0 * 1e-3, r1 * 1e-3, z0 * 1e-3, z1 * 1e-3}, within(1e-12));
    }

    @Test
    void referenceSwitchInSiUnits() {
        SwitchModel m = SwitchReader.read(new SourceFile.OnDisk(ModelFiles.REFERENCE), MATERIALS);
        assertThat(m.id()).isEqualTo("p14-reference");
        assertThat(m.mounting()).isEqualTo(Mounting.FLUSH);
        assertThat(m.ratedDistance()).isEqualTo(5e-3);
        assertThat(m.effectiveDistance()).isEqualTo(5e-3);
        assertThat(m.faceDiameter()).isEqualTo(18e-3);
        assertThat(m.standardSide()).isEqualTo(18e-3);
        assertThat(m.frequency()).isEqualTo(200e3);
        assertThat(m.winding().turns()).isEqualTo(80);
        assertThat(m.winding().wire().copperDiameter()).isEqualTo(0.1e-3);
        assertThat(m.winding().wire().strands()).isEqualTo(3);
        assertSection(new Part("w", Role.CORE, m.winding().section(), null), 3.3, 5.5, -3.1, -0.8);
        assertThat(m.parts()).extracting(Part::name).containsExactly("core back", "core post", "core rim", "tube");
        assertSection(m.parts().get(0), 0, 7, -4.8, -3.4);
        assertSection(m.parts().get(1), 0, 3, -3.4, -0.6);
        assertSection(m.parts().get(2), 5.8, 7, -3.4, -0.6);
        assertSection(m.parts().get(3), 8, 9, -40, 0);
        assertThat(m.parts().get(0).material().permeability().getReal()).isEqualTo(1500);
        assertThat(m.parts().get(0).material().permeability().getImaginary()).isEqualTo(-20);
        assertThat(m.parts().get(3).material().conductivity20()).isEqualTo(16e6);
        assertThat(m.parts().get(3).role()).isEqualTo(Role.HOUSING);
        assertThat(m.element()).isEqualTo(new TanhPair(50e-6, 200e-6));
        assertThat(m.differentialTravel()).isEqualTo(0.05);
        assertThat(m.output()).isEqualTo(OutputFunction.NORMALLY_OPEN);
    }

    @Test
    void otherOscillatorsAndAnAirCoil() {
        String hard = TEXT.replace("tanh pair", "hard limiter").replace("  transconductance: 200 uS\n", "");
        assertThat(read(hard).element()).isEqualTo(new HardLimiter(50e-6));
        String clipped = TEXT.replace("tanh pair", "clipped stage").replace("current: 50 uA", "clip level: 2 V");
        assertThat(read(clipped).element()).isEqualTo(new ClippedStage(200e-6, 2));
        int core = TEXT.indexOf("core:\n");
        String air = TEXT.substring(0, core) + "core: none\n" + TEXT.substring(TEXT.indexOf("winding:"));
        assertThat(read(air).parts()).extracting(Part::name).containsExactly("tube");
        assertThat(read(TEXT.replace("post diameter: 6 mm", "post diameter: 6 mm\n  hole diameter: 2 mm"))
                        .parts()
                        .get(1)
                        .section()
                        .r0())
                .isEqualTo(1e-3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "frequency: 200 kHz | frequency: 0.6 mm | s.yaml:9:12 frequency: got a length (0.6 mm), needs a frequency such as 200 kHz",
                "frequency: 200 kHz | frequency: 50 MHz | s.yaml:9:12 frequency: 50 MHz is out of range, needs 1 kHz to 10 MHz",
                "turns: 80 | turns: 0 | s.yaml:21:10 winding.turns: got 0, needs a whole number from 1 to 5000",
                "mounting: flush | mounting: buried | s.yaml:6:11 mounting: got \"buried\", needs flush or non-flush",
                "back: 40 mm | back: -40 mm | s.yaml:35:11 housing[1].back: -40 mm lies in front of the active face; depths count backwards from the face, from 0 mm",
                "front: 0 mm | front: -1 mm | s.yaml:34:12 housing[1].front: -1 mm lies in front of the active face; depths count backwards from the face, from 0 mm",
                "front: 0 mm | front: 45 mm | s.yaml:35:11 housing[1].back: 40 mm must be larger than front, 45 mm",
                "inner diameter: 16 mm | inner diameter: 19 mm | s.yaml:33:21 housing[1].outer diameter: 18 mm must be larger than inner diameter, 19 mm",
                "inner diameter: 16 mm | inner diameter: 13 mm | s.yaml:30:5 housing[1]: \"tube\" (diameter 13 mm to 18 mm, depth 0 mm to 40 mm) overlaps \"core back\" (diameter 0 mm to 14 mm, depth 3.4 mm to 4.8 mm);s.yaml:30:5 housing[1]: \"tube\" (diameter 13 mm to 18 mm, depth 0 mm to 40 mm) overlaps \"core rim\" (diameter 11.6 mm to 14 mm, depth 0.6 mm to 3.4 mm)",
                "outer diameter: 11 mm | outer diameter: 12 mm | s.yaml:21:3 winding: the winding (diameter 6.6 mm to 12 mm, depth 0.8 mm to 3.1 mm) does not fit the core's window (diameter 6 mm to 11.6 mm, depth 0 mm to 3.4 mm)",
                "copper diameter: 0.1 mm | copper diameter: 0.2 mm | s.yaml:27:5 winding.wire: the wire does not fit: turns x strands x diameter squared is 9.6 mm2, the winding's section only 5.06 mm2",
                "post diameter: 6 mm | post diameter: 12 mm | s.yaml:14:26 core.window outer diameter: 11.6 mm must be larger than post diameter, 12 mm",
                "window depth: 2.8 mm | window depth: 5 mm | s.yaml:16:11 core.height: 4.2 mm must be larger than window depth, 5 mm",
                "material: brass-tube | material: bras-tube | s.yaml:31:15 housing[1].material: unknown material \"bras-tube\", did you mean \"brass-tube\"?",
                "material: brass-tube | material: gouda | s.yaml:31:15 housing[1].material: unknown material \"gouda\", needs an id of shared/materials.yaml such as fe360",
                "material: brass-tube | material: '' | s.yaml:31:15 housing[1].material: the text is empty",
                "name: tube | name: '' | s.yaml:30:11 housing[1].name: the text is empty",
                "name: tube | name: core rim | s.yaml:30:11 housing[1].name: \"core rim\" names another part already",
                "travel: 5 % | travel: 25 % | s.yaml:43:24 switching.differential travel: 25 % is out of range, needs 0.01 % to 20 %",
                "travel: 5 % | travel: 0 % | s.yaml:43:24 switching.differential travel: 0 % is out of range, needs 0.01 % to 20 %",
                "element: tanh pair | element: op amp | s.yaml:38:12 oscillator.element: got \"op amp\", needs clipped stage, hard limiter or tanh pair",
                "element: tanh pair | element: hard limiter | s.yaml:40:3 oscillator.transconductance: unknown key, known here: element, current",
                "rated distance: 5 mm | rated distance: 5 mm;effective distance: 7 mm | s.yaml:8:21 effective distance: 7 mm is out of range, needs 4.5 mm to 5.5 mm",
                "mounting: flush | mountin: flush | s.yaml:2:1 mounting: missing, needs flush or non-flush;s.yaml:6:1 mountin: unknown key, did you mean \"mounting\"?"
            })
    void saysWhereAndWhat(String before, String after, String message) {
        assertThat(TEXT).contains(before);
        String text = TEXT.replace(before, after.replace(";", "\n"));
        assertThat(failure(text).replace("\ns.yaml", ";s.yaml")).isEqualTo(message);
    }
}
