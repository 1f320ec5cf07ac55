package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.materials.FactorBand;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Own materials and files that are named by id or path. */
class MaterialFileTest {

    @TempDir
    private Path folder;

    private Materials read(String materials) {
        return Materials.read(
                ModelFiles.write(folder, "m.yaml", "eddyreach: materials\nmaterials:\n" + materials + "\n"));
    }

    @Test
    void whatAFileMaySay() {
        Materials m = read("""
                  tin: {name: tin, resistivity: 1e-7 ohm m, source: a book, also: [Stannum, white tin]}
                  mumetal: {name: mumetal, conductivity: 1.7 MS/m, temperature coefficient: 0.4 %/K,
                            permeability: 30000, permeability loss: 10, source: a book,
                            usual factor: {low: 0.9, high: 1.1, source: from memory}}
                """);
        assertThat(m.get("tin").conductivity20()).isCloseTo(1e7, within(1e-3));
        assertThat(m.get("mumetal").temperatureCoefficient()).isCloseTo(4e-3, within(1e-12));
        assertThat(m.get("mumetal").muReal()).isEqualTo(30000);
        assertThat(m.get("mumetal").muImag()).isEqualTo(10);
        assertThat(m.find("stannum")).contains(m.get("tin"));
        assertThat(m.find("White-Tin")).contains(m.get("tin"));
        assertThat(m.find("lead")).isEmpty();
        assertThat(m.usualFactor("mumetal")).contains(new FactorBand(0.9, 1.1, "from memory"));
        assertThat(m.usualFactor("tin")).isEmpty();
        assertThat(m.ids()).containsExactly("tin", "mumetal");
        assertThat(m.all()).hasSize(2);
        assertThatThrownBy(() -> m.get("tim"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("unknown material \"tim\", did you mean \"tin\"?");
        assertThatThrownBy(() -> m.get("lead"))
                .hasMessage("unknown material \"lead\", needs an id of shared/materials.yaml such as fe360");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "  Tin: {name: tin, conductivity: 9 MS/m, source: b} | an id has 1 to 40 small letters, digits and hyphens",
                "  tin: {name: tin, conductivity: 9 MS/m, resistivity: 1e-7 ohm m, source: b} | stands beside conductivity, give one of the two",
                "  tin: {name: tin, conductivity: 101 MS/m, source: b} | conductivity: 101 MS/m is out of range",
                "  tin: {name: tin, conductivity: 9 MS/m} | source: missing, needs a text",
                "  tin: {name: tin, source: b} | conductivity: missing",
                "  tin: {name: tin, conductivity: 9 MS/m, sauce: b, source: b} | tin.sauce: unknown key, known here: name",
                "  tin: {name: tin, conductivity: 9 MS/m, source: b, usual factor: {low: 1, high: 1, source: b}} | usual factor.high: must be above low, 1.0",
                "  copper: {name: copper, conductivity: 0 S/m, source: b} | the winding's copper must conduct and not be magnetic",
                "  copper: {name: copper, conductivity: 58 MS/m, permeability: 2, source: b} | the winding's copper must conduct and not be magnetic",
                "  copper: {name: copper, conductivity: 58 MS/m, permeability loss: 1, source: b} | the winding's copper must conduct",
                "  tin: {name: tin, conductivity: 9 MS/m, source: b, also: [tin]} | also[1]: already stands for tin",
            })
    void whatAFileMayNotSay(String line, String message) {
        InputException e = catchThrowableOfType(InputException.class, () -> read("  " + line));
        assertThat(e).isNotNull();
        assertThat(e.getMessage()).contains(message);
    }

    /** Own values come first; the trade's band was given for the shipped material, not for one that replaces it. */
    @Test
    void ownMaterialsReplaceShippedOnes() {
        Materials shipped = ModelFiles.materials();
        assertThat(shipped.usualFactor("brass")).isPresent();
        Materials both = shipped.with(read("""
                  brass: {name: my brass, conductivity: 13 MS/m, source: measured}
                  gallium: {name: gallium, conductivity: 7 MS/m, source: b, also: [ga],
                            usual factor: {low: 0.3, high: 0.5, source: b}}
                """));
        assertThat(both.get("brass").conductivity20()).isCloseTo(13e6, within(1e-3));
        assertThat(both.usualFactor("brass")).isEmpty();
        assertThat(both.usualFactor("copper")).isPresent();
        assertThat(both.usualFactor("gallium")).isPresent();
        assertThat(both.find("Ga")).contains(both.get("gallium"));
        assertThat(both.ids()).contains("copper", "gallium");
    }

    @Test
    void filesByIdAndByPath() throws IOException {
        Library library = new Library(folder);
        assertThat(library.studies()).contains("m18-derating").doesNotContain("m18-flush");
        assertThat(library.studyFile("m18-derating").name()).isEqualTo("studies/m18-derating.yaml");
        assertThat(library.file("m18-derating").name()).isEqualTo("studies/m18-derating.yaml");
        assertThat(library.file("m18-flush").name()).isEqualTo("models/m18-flush.yaml");
        assertThat(library.file("models/m18-flush.yaml")).isInstanceOf(SourceFile.Shipped.class);
        assertThat(library.file("studies/m18-derating.yaml")).isInstanceOf(SourceFile.Shipped.class);
        assertThat(library.file("shared/materials.yaml")).isInstanceOf(SourceFile.Shipped.class);
        assertThat(library.file("my/own.yaml")).isInstanceOf(SourceFile.OnDisk.class);
        assertThatThrownBy(() -> library.file("m18-deratin"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("there is no study of this name; did you mean m18-derating?");
        assertThatThrownBy(() -> library.switchFile("steel-recess-3"))
                .as("a mount is no switch")
                .isInstanceOf(InputException.class)
                .hasMessageContaining("there is no switch of this name; known: block40-flush")
                .hasMessageNotContaining("steel-recess-36");
        assertThatThrownBy(() -> library.mountName("m18-flus"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("there is no mount of this name")
                .hasMessageNotContaining("m18-flush");
        Files.createDirectories(folder.resolve("models"));
        Files.writeString(folder.resolve("models/my switch.yaml"), "eddyreach: switch\n");
        Files.writeString(folder.resolve("models/mine.txt"), "no switch");
        Files.writeString(folder.resolve("models/mine.yaml"), "eddyreach: mount\n");
        assertThat(library.mounts()).contains("mine", "steel-recess-36").doesNotContain("m18-flush");
        assertThat(library.switches())
                .as("what is no id is named by its path")
                .noneMatch(id -> id.startsWith("my") || id.startsWith("mine"));
    }
}
