package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.kinds.recess.RecessInput;
import eddyreach.model.read.Library;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.page.Csv;
import eddyreach.studies.StudyReader;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A map in a process of its own, asked to stop and killed, and what the next run makes of it. */
class RecessRunTest {

    private static final String STUDY = """
            eddyreach: study
            name: a map
            kind: recess
            switch: m8-non-flush
            wall: {materials: [%s], thickness: 14 mm, hole: tapped}
            diameters: {from: 9 mm, to: 24 mm, points: 5}
            depths: {from: 4 mm, to: 7 mm, points: 5}
            recess: {diameter: 22 mm, depth: 7 mm}
            """;

    /** Exit code of a Java program that was asked to end: 128 and the number of the signal. */
    private static final int TERMINATED = 143;

    @TempDir
    private Path folder;

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "eddyreach.cli.Main",
                        "run",
                        "map.yaml",
                        "--into",
                        "out",
                        "--no-pictures")
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(new File(folder.toFile(), "said.txt"))
                .start();
    }

    private void awaitState() throws InterruptedException {
        Path state = folder.resolve("out/run.state");
        for (int i = 0; i < 600 && !Files.exists(state); i++) {
            Thread.sleep(50);
        }
        assertThat(state).exists();
    }

    /** Stopped at once: nothing is finished, and that is what all files say. */
    @Test
    void stoppedBeforeTheFirstCell() throws IOException {
        Files.writeString(folder.resolve("map.yaml"), STUDY.formatted("fe360"));
        Library library = new Library(folder);
        RecessInput study = (RecessInput) StudyReader.read(library.studyFile("./map.yaml"), library);
        StringWriter out = new StringWriter();
        Terminal terminal = new Terminal(new PrintWriter(out), new PrintWriter(out), folder, false, false, 80);
        Path result = folder.resolve("out");
        boolean whole = new Job(terminal, Job.Show.REPORT, "", Csv.Decimal.POINT)
                .run(study, result, EnumSet.of(PictureWriter.Format.PNG, PictureWriter.Format.SVG), () -> true);
        assertThat(whole).isFalse();
        assertThat(out.toString()).contains("Partial: 0 of 25").contains("cells were computed");
        assertThat(Session.files(result))
                .containsExactly(
                        "page.html",
                        "page.md",
                        "recess.csv",
                        "recess.png",
                        "recess.svg",
                        "record.html",
                        "record.md",
                        "result.json",
                        "run.state");
        Path state = result.resolve("run.state");
        Files.writeString(state, Files.readString(state).replace("key ", "kez "));
        new Job(terminal, Job.Show.REPORT, "", Csv.Decimal.POINT)
                .run(study, result, EnumSet.noneOf(PictureWriter.Format.class), () -> true);
        assertThat(out.toString()).contains("is damaged and is not used");
        Files.writeString(state, "nothing of this kind");
        assertThatThrownBy(() -> new Job(terminal, Job.Show.REPORT, "", Csv.Decimal.POINT)
                        .run(study, result, EnumSet.noneOf(PictureWriter.Format.class), () -> true))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("not of an unfinished run");
        assertThat(state).hasContent("nothing of this kind");
        Files.delete(state);
        Path precious = Files.writeString(folder.resolve("precious.txt"), "mine");
        Files.createSymbolicLink(result.resolve(".run.state.new"), precious);
        new Job(terminal, Job.Show.REPORT, "", Csv.Decimal.POINT)
                .run(study, result, EnumSet.noneOf(PictureWriter.Format.class), () -> true);
        assertThat(precious).hasContent("mine");
    }

    @Tag("long")
    @EnabledOnOs(value = OS.LINUX, disabledReason = "exit codes of signals as Linux has them")
    @Test
    void stoppedThenKilledThenFinished() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("map.yaml"), STUDY.formatted("fe360"));
        Process run = start();
        awaitState();
        // asked to end as by Ctrl-C, whose own signal a process in the background may be deaf to
        run.destroy();
        assertThat(run.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(run.exitValue()).isEqualTo(TERMINATED);
        assertThat(Files.readString(folder.resolve("said.txt")))
                .contains("Stopping")
                .contains("Partial: ");
        assertThat(Files.readString(folder.resolve("out/page.md"))).contains("Partial: ");
        assertThat(Files.readString(folder.resolve("out/result.json"))).contains("\"partial\": true");
        long rows = Files.readString(folder.resolve("out/recess.csv")).lines().count() - 1;
        assertThat(rows).isBetween(1L, 24L);

        Process killed = start();
        Thread.sleep(1000);
        killed.destroyForcibly().waitFor();
        String state = Files.readString(folder.resolve("out/run.state"));
        assertThat(state).startsWith("eddyreach run state 1\n").containsPattern("end [0-9a-f]{64}\n$");
        assertThat(Files.readString(folder.resolve("out/result.json"))).endsWith("}\n");

        Session last = Session.in(folder, "run", "map.yaml", "--into", "out", "--no-pictures");
        assertThat(last.code()).isZero();
        assertThat(last.err()).contains("Going on with ");
        assertThat(last.out()).doesNotContain("Partial");
        assertThat(Files.readString(folder.resolve("out/recess.csv")).lines()).hasSize(26);
        assertThat(Session.files(folder.resolve("out")))
                .containsExactly("page.html", "page.md", "recess.csv", "record.html", "record.md", "result.json");
    }
}
