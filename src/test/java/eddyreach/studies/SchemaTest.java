package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.yaml.InputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tools.jackson.databind.json.JsonMapper;

/** The schemas agree with the shipped files and, on what both check, with the readers. */
class SchemaTest {

    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final JsonMapper MAPPER = new JsonMapper();

    private static final String STUDY = """
            eddyreach: study
            name: factors
            kind: materials
            switch: p14-reference
            materials: [fe360, copper]
            thickness: 1 mm
            shape: disc
            diameter: 20 mm
            distances: {from: 0.5 mm, to: 10 mm, points: 40}
            accuracy: 0.02 mm
            field pictures: no
            """;

    @TempDir
    private Path folder;

    private static Schema schema(String kind) {
        return REGISTRY.getSchema(ModelFiles.text(Path.of("shared/schema/" + kind + ".schema.json")));
    }

    private static List<String> errors(String kind, String yaml) {
        Object data =
                new Load(LoadSettings.builder().setSchema(new CoreSchema()).build()).loadFromString(yaml);
        return schema(kind).validate(MAPPER.valueToTree(data)).stream()
                .map(Error::toString)
                .toList();
    }

    private ApproachInput study(String text) {
        return (ApproachInput) StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(folder));
    }

    static List<Path> shippedFiles() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String name : List.of("models", "studies", "shared")) {
            if (Files.isDirectory(Path.of(name))) {
                try (Stream<Path> list = Files.list(Path.of(name))) {
                    list.filter(p -> p.toString().endsWith(".yaml")).sorted().forEach(files::add);
                }
            }
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(2);
        return files;
    }

    @ParameterizedTest
    @MethodSource("shippedFiles")
    void everyShippedFileFitsItsSchemaAndNamesIt(Path path) {
        String text = ModelFiles.text(path);
        String kind = text.replaceFirst("(?s).*?\neddyreach: (\\w+)\n.*", "$1");
        assertThat(errors(kind, text)).isEmpty();
        String named = text.lines().findFirst().orElseThrow().replaceFirst("# yaml-language-server: \\$schema=", "");
        assertThat(path.resolveSibling(named).normalize()).isEqualTo(Path.of("shared/schema/" + kind + ".schema.json"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "frequency: 200 kHz | frequency: 200 mm",
                "frequency: 200 kHz | frequency: 200",
                "frequency: 200 kHz | frequenci: 200 kHz",
                "rated distance: 5 mm | rated distance: 5,5 mm",
                "rated distance: 5 mm | rated distance: 5 inch",
                "turns: 80 | turns: 0",
                "turns: 80 | turns: many",
                "mounting: flush | mounting: deep",
                "material: brass-tube | material: Brass",
                "element: tanh pair | element: hard limiter",
                "differential travel: 5 % | differential travel: 5 mm",
                "transconductance: 200 uS | transconductance: 200 S/m",
                "front: 0 mm | depth: 0 mm"
            })
    void schemaAndReaderRefuseTheSame(String before, String after) {
        String good = ModelFiles.text(ModelFiles.REFERENCE);
        assertThat(good).contains(before);
        String bad = good.replace(before, after);
        assertThat(errors("switch", bad)).isNotEmpty();
        assertThatThrownBy(() -> SwitchReader.read(ModelFiles.write(folder, "x.yaml", bad), ModelFiles.materials()))
                .isInstanceOf(InputException.class);
    }

    @Test
    void studies() {
        assertThat(errors("study", STUDY)).isEmpty();
        assertThat(study(STUDY).targets()).hasSize(2);
        String approach = STUDY.replaceFirst("(?s)materials: \\[.*?distances", "targets: TARGETS\ndistances")
                .replace("kind: materials", "kind: approach");
        assertThat(errors("study", approach.replace("TARGETS", "[{name: a, material: fe360}]")))
                .isEmpty();
        assertThat(errors("study", approach.replace("TARGETS", "[{name: a, material: fe360, shape: disc}]")))
                .isNotEmpty();
        assertThat(errors(
                        "study",
                        approach.replace(
                                "TARGETS", "[{name: a, shape: plate, layers: [{material: zinc, thickness: 5 um}]}]")))
                .isEmpty();
        assertThat(errors("study", approach.replace("TARGETS", "[{name: a, layers: [], material: zinc}]")))
                .isNotEmpty();
    }

    /** Targets that both accept, and targets that both refuse. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "true | shape: washer, outer: 20 mm, inner: 10 mm, thickness: 2 mm, material: fe360, slit: yes",
                "false | shape: washer, outer: 20 mm, thickness: 2 mm, material: fe360",
                "true | shape: tube, outer: 20 mm, wall: 1 mm, length: 30 mm, material: brass",
                "false | shape: tube, outer: 20 mm, wall: 1 mm, inner: 18 mm, length: 30 mm, material: brass",
                "false | shape: tube, outer: 20 mm, length: 30 mm, material: brass",
                "true | shape: cylinder, diameter: 8 mm, length: 3 mm, material: zinc",
                "false | shape: cylinder, diameter: 8 mm, length: 3 mm, material: zinc, slit: yes",
                "true | shape: sphere, diameter: 8 mm, material: zinc",
                "false | shape: sphere, diameter: 8 mm, material: zinc, thickness: 1 mm",
                "true | shape: screw, head diameter: 13 mm, head height: 5 mm, shank diameter: 8 mm, shank length: 9 mm, material: zinc, point first: yes",
                "false | shape: screw, head diameter: 13 mm, shank diameter: 8 mm, shank length: 9 mm, material: zinc",
                "true | shape: rings, rings: [{material: zinc, outer: 8 mm, from: 0 mm, to: 3 mm}]",
                "false | shape: rings, rings: [{material: zinc, outer: 8 mm, from: 0 mm}]",
                "false | shape: rings, material: zinc, rings: [{material: zinc, outer: 8 mm, from: 0 mm, to: 3 mm}]",
                "true | shape: rectangle, width: 8 mm, height: 9 mm, thickness: 1 mm, material: zinc",
                "false | shape: rectangle, width: 8 mm, thickness: 1 mm, material: zinc",
                "true | material: zinc, open area: 30 %",
                "true | material: zinc, mesh: {wire: 0.1 mm, pitch: 1 mm}",
                "false | material: zinc, mesh: {wire: 0.1 mm, pitch: 1 mm}, thickness: 1 mm",
                "false | material: zinc, mesh: {wire: 0.1 mm, pitch: 1 mm}, open area: 30 %",
                "true | shape: disc, diameter: 8 mm, thickness: 1 mm, material: fe360, coating: {material: zinc, thickness: 5 um}",
                "false | material: fe360, coating: {material: zinc, thickness: 5 um}",
                "true | material: fe360, offset: 6 mm",
                "true | material: fe360, temperature: 200 degC",
                "false | material: fe360, temperature: 200",
                "true | shape: sphere, diameter: 8 mm, material: zinc, offset: 0 mm",
                "false | material: fe360, offset: 6"
            })
    void schemaAndReaderAgreeOnTargets(boolean good, String target) {
        String study = STUDY.replaceFirst("(?s)materials: \\[.*?distances", "targets: [{name: a, TARGET}]\ndistances")
                .replace("kind: materials", "kind: approach")
                .replace("TARGET", target);
        assertThat(errors("study", study).isEmpty()).isEqualTo(good);
        if (good) {
            assertThat(study(study).targets()).hasSize(1);
        } else {
            assertThatThrownBy(() -> study(study)).isInstanceOf(InputException.class);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "m18-foil-thickness | to: 5 mm | to: 5 MS/m",
                "m18-foil-thickness | points: 61 | points: 1",
                "m18-foil-thickness | thicknesses: | thickness:",
                "m18-foil-thickness | kind: thickness | kind: size",
                "m18-size | thickness: 1 mm | diameter: 2 mm",
                "m18-conductivity-map | from: 0.5 MS/m | from: 0.5 mm",
                "m18-conductivity-map | from: 1, | from: 0.5,",
                "m18-plating | base: {material: fe360, thickness: 1.5 mm} | base: {material: fe360}",
                "m18-plating | coatings: | materials:",
                "m18-plating | kind: layers | kind: approach",
                "m18-zone | kind: zone | kind: pass",
                "m18-zone | label: standard target | offset: 3 mm",
                "m18-pass | distance: 2.5 mm | offsets: {from: 3 mm}",
                "m18-pass | kind: pass | kind: zone",
                "m18-pass | distance: | reach:"
            })
    void schemaAndReaderRefuseTheSameSweeps(String study, String before, String after) {
        String good = ModelFiles.text(Path.of("studies", study + ".yaml"));
        assertThat(good).contains(before);
        assertThat(errors("study", good)).isEmpty();
        String bad = good.replace(before, after);
        assertThat(errors("study", bad)).isNotEmpty();
        assertThatThrownBy(() -> StudyReader.read(ModelFiles.write(folder, "s.yaml", bad), new Library(folder)))
                .isInstanceOf(InputException.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"kind: materials", "switch: p14-reference", "materials: [fe360, copper]", "diameter: 20 mm"})
    void studiesWithoutARequiredKeyAreRefused(String line) {
        assertThat(STUDY).contains(line);
        String bad = STUDY.replace(line + "\n", "");
        assertThat(errors("study", bad)).isNotEmpty();
        assertThatThrownBy(() -> study(bad)).isInstanceOf(InputException.class);
    }
}
