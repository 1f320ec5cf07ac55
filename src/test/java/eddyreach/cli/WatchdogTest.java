package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two hundred extreme files that the readers may accept, each as a process of its own under a watchdog: none is silent for longer than a
 * minute, none runs on after it was told to stop, none ends in an internal error.
 */
class WatchdogTest {

    private static final int FILES = 200;

    /** Longest silence, s. */
    private static final long SILENCE = 60;

    /** After this time a run that still reports is told to stop, s. */
    private static final long ENOUGH = 90;

    /** Time to stop in, s: a field problem is finished first. */
    private static final long STOPPING = 60;

    /** Exit codes of a result, of a computation that has no answer, and of bad input. */
    private static final List<Integer> CODES = List.of(0, 1, 2);

    @TempDir
    private Path folder;

    @Tag("long")
    @Test
    void extremeFilesReportStopAndNeverBreak() throws IOException, InterruptedException {
        List<String> wrong = new ArrayList<>();
        int answered = 0;
        for (int seed = 1; seed <= FILES; seed++) {
            Path study = Files.createDirectories(folder.resolve("s" + seed)).resolve("s" + seed + ".yaml");
            if (seed % 2 == 0) {
                RandomStudy random = RandomStudy.of(1000 + seed);
                Files.writeString(study.resolveSibling("x-switch.yaml"), random.switchFile());
                Files.writeString(study, random.studyFile());
            } else {
                Files.writeString(study, ExtremeStudy.of(seed / 2));
            }
            Run run = watch(study);
            answered += run.code == 0 ? 1 : 0;
            run.fault().ifPresent(f -> wrong.add(study.getFileName() + ": " + f));
        }
        assertThat(wrong).isEmpty();
        assertThat(answered).isGreaterThan(FILES / 3);
    }

    private record Run(int code, boolean silent, boolean stopped, boolean unstoppable, String err) {

        Optional<String> fault() {
            if (silent) {
                return Optional.of("silent for a minute");
            }
            if (unstoppable) {
                return Optional.of("does not stop");
            }
            if (err.contains("nternal error") || err.contains("\tat ")) {
                return Optional.of(err);
            }
            return stopped || CODES.contains(code) ? Optional.empty() : Optional.of("exit " + code);
        }
    }

    private Run watch(Path study) throws IOException, InterruptedException {
        Path err = study.resolveSibling(study.getFileName() + ".err");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Main.class.getName(),
                        "run",
                        study.toString(),
                        "--into",
                        study.resolveSibling("out").toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(err.toFile())
                .start();
        long start = System.nanoTime();
        long heard = start;
        long size = 0;
        while (!process.waitFor(500, TimeUnit.MILLISECONDS)) {
            long now = System.nanoTime();
            if (Files.size(err) > size) {
                size = Files.size(err);
                heard = now;
            }
            boolean silent = Duration.ofNanos(now - heard).toSeconds() > SILENCE;
            if (silent || Duration.ofNanos(now - start).toSeconds() > ENOUGH) {
                process.destroy();
                boolean ended = process.waitFor(STOPPING, TimeUnit.SECONDS);
                process.destroyForcibly();
                return new Run(-1, silent, true, !ended, Files.readString(err));
            }
        }
        return new Run(process.exitValue(), false, false, false, Files.readString(err));
    }
}
