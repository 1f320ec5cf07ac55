package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LibraryTest {

    @TempDir
    private Path elsewhere;

    @Test
    void shippedFilesAreFoundFromAnyFolder() {
        Library library = new Library(elsewhere);
        assertThat(library.switches()).contains("p14-reference");
        assertThat(library.switchModel("p14-reference").frequency()).isEqualTo(200e3);
        assertThat(library.switchModel("models/p14-reference.yaml").id()).isEqualTo("p14-reference");
        assertThat(library.switchFile("p14-reference")).isInstanceOf(SourceFile.Shipped.class);
        assertThat(new Library(Path.of("")).switchFile("p14-reference").name()).isEqualTo("models/p14-reference.yaml");
    }

    @Test
    void theWorkingFolderComesFirst() throws IOException {
        Path models = Files.createDirectories(elsewhere.resolve("models"));
        String text = ModelFiles.text(ModelFiles.REFERENCE);
        Files.writeString(models.resolve("p14-reference.yaml"), text.replace("200 kHz", "300 kHz"));
        Files.writeString(models.resolve("mine.yaml"), text);
        Library library = new Library(elsewhere);
        assertThat(library.switches()).contains("mine", "p14-reference");
        assertThat(library.switchModel("p14-reference").frequency()).isEqualTo(300e3);
        assertThat(library.switchModel(models.resolve("mine.yaml").toString()).id())
                .isEqualTo("mine");
        SourceFile study = new SourceFile.OnDisk(elsewhere.resolve("studies/s.yaml"));
        assertThat(library.switchFile("../models/mine.yaml", study).content()).isNotEmpty();
        assertThat(library.switchFile("mine", study).id()).isEqualTo("mine");
    }

    @Test
    void ownMaterialsStandBesideTheShippedOnes() throws IOException {
        Materials shipped = new Library(elsewhere).materials();
        Path shared = Files.createDirectories(elsewhere.resolve("shared"));
        Files.writeString(shared.resolve("materials.yaml"), """
                eddyreach: materials
                materials:
                  hard-steel: {name: hardened steel, conductivity: 4 MS/m, permeability: 60, source: guess}
                  brass: {name: brass of ours, conductivity: 14 MS/m, source: measured}
                """);
        Materials both = new Library(elsewhere).materials();
        assertThat(both.ids())
                .containsAll(shipped.ids())
                .contains("hard-steel")
                .hasSize(shipped.ids().size() + 1);
        assertThat(both.get("hard-steel").muReal()).isEqualTo(60);
        assertThat(both.get("brass").conductivity20()).isEqualTo(14e6);
        assertThat(shipped.usualFactor("brass")).isPresent();
        assertThat(both.usualFactor("brass")).as("was given for another brass").isEmpty();
        assertThat(both.usualFactor("copper")).isEqualTo(shipped.usualFactor("copper"));
    }

    @Test
    void whatIsNotThereIsSaidClearly() {
        Library library = new Library(elsewhere);
        assertThatThrownBy(() -> library.switchModel("p14-referense"))
                .isInstanceOf(InputException.class)
                .hasMessage("p14-referense: there is no switch of this name; did you mean p14-reference?");
        assertThatThrownBy(() -> library.switchFile("nothing-like-it"))
                .hasMessageStartingWith("nothing-like-it: there is no switch of this name; known: ");
        assertThatThrownBy(() -> library.switchFile("../../etc/x.yaml").content())
                .isInstanceOf(InputException.class)
                .hasMessageEndingWith("/../../etc/x.yaml: file not found");
        assertThatThrownBy(() -> library.switchFile("a\0b.yaml"))
                .isInstanceOf(InputException.class)
                .hasMessage("a b.yaml: the name of the file holds a control character");
        assertThatThrownBy(() -> library.switchFile(" ")).hasMessage("(no name): the name of a file is empty");
        assertThatThrownBy(() -> library.switchFile("./.").content()).hasMessageEndingWith("is a folder, needs a file");
    }

    @Test
    void referencesWithinShippedFilesStayThere() {
        SourceFile study = new SourceFile.Shipped("studies/s.yaml");
        assertThat(study.sibling("../models/p14-reference.yaml").content()).isNotEmpty();
        assertThat(study.sibling("./t.yaml").name()).isEqualTo("studies/t.yaml");
        assertThatThrownBy(() -> study.sibling("../../models/p14-reference.yaml"))
                .isInstanceOf(InputException.class)
                .hasMessage("../../models/p14-reference.yaml: leads out of the shipped files");
        assertThatThrownBy(() -> study.sibling("none.yaml").content())
                .hasMessage("studies/none.yaml: file not found among the shipped files");
        SourceFile absolute = study.sibling(elsewhere.resolve("x.yaml").toString());
        assertThatThrownBy(absolute::content).hasMessageEndingWith("x.yaml: file not found");
    }
}
