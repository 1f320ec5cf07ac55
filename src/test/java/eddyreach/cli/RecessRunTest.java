package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A map in a process of its own, asked to stop and killed, and what the next run makes of it. */
@EnabledOnOs(value = OS.LINUX, disabledReason = "exit codes of signals as Linux has them")
class RecessRunTest {

    private static final String STUDY = """
            eddyreach: study
            name: a map
            kind: recess
            switch: m8-non-flush
            wall: {materials: [%s], thickness: 14 mm}
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
        Path state = folder.resolve("out/recess.state");
        for (int i = 0; i < 600 && !Files.exists(state); i++) {
            Thread.sleep(50);
        }
        assertThat(state).exists();
    }

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
        String state = Files.readString(folder.resolve("out/recess.state"));
        assertThat(state).startsWith("eddyreach recess state 1\n").containsPattern("end [0-9a-f]{64}\n$");
        assertThat(Files.readString(folder.resolve("out/result.json"))).endsWith("}\n");

        Session last = Session.in(folder, "run", "map.yaml", "--into", "out", "--no-pictures");
        assertThat(last.code()).isZero();
        assertThat(last.err()).contains("Going on with ");
        assertThat(last.out()).doesNotContain("Partial");
        assertThat(Files.readString(folder.resolve("out/recess.csv")).lines()).hasSize(26);
        assertThat(Session.files(folder.resolve("out")))
                .containsExactly("page.html", "page.md", "recess.csv", "result.json");
    }
}
