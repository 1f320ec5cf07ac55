package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunCommandTest {

    /** Endless plates need no mesh of their own, so this is the fastest study there is. */
    static final String QUICK = """
            eddyreach: study
            name: endless plates
            kind: approach
            switch: p14-reference
            targets:
              - {name: sheet, material: aluminium, thickness: 1 mm, shape: plate}
            distances: {from: 0 mm, to: 12.5 mm, points: 11}
            field pictures: no
            """;

    @TempDir
    private Path folder;

    private void study(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    @Test
    void oneStudyIntoItsFolderUnderResults() throws IOException {
        study("quick.yaml", QUICK);
        Session s = Session.in(folder, "run", "quick.yaml");
        assertThat(s.err()).isEmpty();
        assertThat(s.code()).isZero();
        assertThat(s.out())
                .startsWith("Yes: on at 2.")
                .contains("\nStudy: endless plates.\nSwitch: M18 flush reference switch, pot core P14, ")
                .contains("\nfe360                 5.00 (trim)")
                .contains("\nsheet                 2.")
                .contains("skin depth 0.19 mm, strong currents\nbut little loss;")
                .contains("\nNote, relative permeability assumed (fe360 150): it varies from piece to piece")
                .contains(
                        "\nFiles: results/quick\nTo send on: page.html (two pages). Full record: record.html.\nComputed estimate; confirm it on the machine.")
                .endsWith("""

                        Pictures, in results/quick, as png:
                          factors  amplitude  impedance  plane  losses
                        """);
        assertThat(Session.files(folder))
                .containsExactly(
                        "quick.yaml",
                        "results",
                        "results/quick",
                        "results/quick/amplitude.png",
                        "results/quick/distances.csv",
                        "results/quick/factors.png",
                        "results/quick/impedance.csv",
                        "results/quick/impedance.png",
                        "results/quick/losses.png",
                        "results/quick/page.html",
                        "results/quick/page.md",
                        "results/quick/plane.png",
                        "results/quick/record.html",
                        "results/quick/record.md",
                        "results/quick/result.json");
    }

    @Test
    void theDocumentAndNothingElse() throws IOException {
        study("quick.yaml", QUICK);
        Session s = Session.in(folder, "run", "quick.yaml", "--no-pictures", "--json");
        assertThat(s.code()).isZero();
        assertThat(s.err()).isEmpty();
        // a session shows every backslash as a stroke
        assertThat(s.out())
                .isEqualTo(Files.readString(folder.resolve("results/quick/result.json"))
                        .replace('\\', '/'));
        assertThat(Session.in(folder, "run", "quick.yaml", "quick.yaml", "--json")
                        .err())
                .startsWith("--json prints one document, so it needs one study\n");
    }

    @Test
    void severalStudiesQuietlyWithoutPictures() throws IOException {
        study("one.yaml", QUICK);
        study("two.yaml", QUICK.replace("aluminium", "copper"));
        Session s = Session.in(folder, "run", "one.yaml", "two.yaml", "--into", "both", "--no-pictures", "--quiet");
        assertThat(s).isEqualTo(new Session(0, "", ""));
        assertThat(Session.files(folder.resolve("both")))
                .containsExactly(
                        "one",
                        "one/distances.csv",
                        "one/impedance.csv",
                        "one/page.html",
                        "one/page.md",
                        "one/record.html",
                        "one/record.md",
                        "one/result.json",
                        "two",
                        "two/distances.csv",
                        "two/impedance.csv",
                        "two/page.html",
                        "two/page.md",
                        "two/record.html",
                        "two/record.md",
                        "two/result.json");
    }

    @Test
    void badStudiesAreToldWithAllTheirErrorsAndNothingIsWritten() throws IOException {
        study("good.yaml", QUICK);
        study(
                "bad.yaml",
                QUICK.replace("aluminium", "aluminun")
                        .replace("1 mm", "1 kg")
                        .replace("points: 11", "points: 11, step: 1 mm"));
        Session s = Session.in(folder, "run", "good.yaml", "bad.yaml", "none.yaml", "m18-deratin");
        assertThat(s).isEqualTo(new Session(2, "", """
                bad.yaml:6:29 targets[1].material: unknown material "aluminun", did you mean "aluminium"?
                bad.yaml:6:50 targets[1].thickness: 1 kg: unknown unit "kg", needs a length such as 0.6 mm
                bad.yaml:7:50 distances.step: unknown key, known here: from, to, points
                none.yaml: file not found
                m18-deratin: there is no study of this name; did you mean m18-derating?
                5 errors; nothing was run.
                """));
        assertThat(Session.files(folder)).containsExactly("bad.yaml", "good.yaml");
    }

    @Test
    void whatLeavesNoRoomIsRefused() throws IOException {
        study("background.yaml", """
                eddyreach: study
                name: b
                kind: background
                switch: p14-reference
                background: {material: fe360, thickness: 10 mm}
                distances: {from: 0 mm, to: 1 mm, points: 11}
                """);
        study("sunk.yaml", """
                eddyreach: study
                name: s
                kind: mount
                switch: p14-reference
                mounts:
                  - {name: a, sunk by: 10 m, wall: {material: fe360, thickness: 20 mm}}
                  - {name: b, wall: {material: fe360, thickness: 20 mm, diameter: 900 mm}}
                """);
        assertThat(Session.in(folder, "run", "background.yaml", "sunk.yaml")).isEqualTo(new Session(2, "", """
                        background.yaml:6:12 distances: the farthest background, 1 mm before the active face, leaves no room for the target "fe360", needs at least 2 mm
                        sunk.yaml:6:24 mounts[1].sunk by: 10 m is out of range, needs 0 mm to 180 mm
                        sunk.yaml:7:67 mounts[2].wall.diameter: 900 mm is out of range, needs 10 um to 360 mm
                        3 errors; nothing was run.
                        """));
    }

    @Test
    void whereResultsMayNotGo() throws IOException {
        // the id of this file is ".."
        study("...yaml", QUICK);
        assertThat(Session.in(folder, "run", "...yaml")).isEqualTo(new Session(2, "", """
                results/..: lies outside the folder results, where results go
                1 error; nothing was run.
                """));
        study("quick.yaml", QUICK);
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.createDirectories(folder.resolve("results"));
        Files.createSymbolicLink(folder.resolve("results/quick"), elsewhere);
        assertThat(Session.in(folder, "run", "quick.yaml")).isEqualTo(new Session(2, "", """
                results/quick: lies outside the folder results, where results go
                1 error; nothing was run.
                """));
        Files.createDirectories(folder.resolve("b"));
        study("b/quick.yaml", QUICK);
        assertThat(Session.in(folder, "run", "quick.yaml", "b/quick.yaml", "--into", "x"))
                .isEqualTo(new Session(2, "", """
                        quick: two of the studies have this name and would share a folder
                        1 error; nothing was run.
                        """));
        assertThat(Session.in(folder, "run", "quick.yaml", "--into", "").err())
                .isEqualTo("--into: the name of the folder is empty\n1 error; nothing was run.\n");
        assertThat(Session.files(elsewhere)).isEmpty();
    }

    @Test
    void aFolderThatCannotBeWrittenIsAFailureNotBadInput() throws IOException {
        study("quick.yaml", QUICK);
        Files.writeString(folder.resolve("taken"), "a file");
        assertThat(Session.in(folder, "run", "quick.yaml", "--into", "taken/deeper"))
                .isEqualTo(new Session(1, "", "Cannot read or write: taken: a file of this name is in the way\n"));
        assertThat(Files.readString(folder.resolve("taken"))).isEqualTo("a file");
    }
}
