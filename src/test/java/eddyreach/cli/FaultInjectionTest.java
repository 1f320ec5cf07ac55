package eddyreach.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A full disk, a folder that cannot be written and a kill at any moment: the earlier result stays, the next run works. */
@Tag("long")
@EnabledOnOs(value = OS.LINUX, disabledReason = "mounts a small disk, and kills as Linux does")
class FaultInjectionTest {

    private static final int SEED = 20260103;
    private static final int KILLS = 50;
    private static final int KILLS_WHILE_WRITING = 25;
    private static final String EARLIER = RunCommandTest.QUICK;
    private static final String LATER = EARLIER.replace("aluminium", "copper");
    private static final int BLOCK = 4096;

    @TempDir
    private Path folder;

    private Path mounted;

    /** Names and contents, but for the hidden folders in which a run prepares its files. */
    private static Map<String, Integer> content(Path result) throws IOException {
        Map<String, Integer> map = new TreeMap<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(result)) {
            for (Path f : files) {
                if (!f.getFileName().toString().startsWith(".")) {
                    map.put(f.getFileName().toString(), Arrays.hashCode(Files.readAllBytes(f)));
                }
            }
        }
        return map;
    }

    /** An empty one stays after a kill in the moment before its run has said in it that it is its own. */
    private static boolean hidden(Path result) throws IOException {
        try (DirectoryStream<Path> folders = Files.newDirectoryStream(result, ".eddyreach-*")) {
            for (Path folder : folders) {
                if (folder.toFile().list().length > 0) {
                    return true;
                }
            }
            return false;
        }
    }

    private void studies() throws IOException {
        Files.writeString(folder.resolve("earlier.yaml"), EARLIER);
        Files.writeString(folder.resolve("later.yaml"), LATER);
    }

    private Session earlier(String into) {
        return Session.in(folder, "run", "earlier.yaml", "--quiet", "--no-pictures", "--into", into);
    }

    private Session later(String into) {
        return Session.in(folder, "run", "later.yaml", "--quiet", "--formats", "png,svg", "--into", into);
    }

    private static int run(String... command) throws IOException, InterruptedException {
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    private Path disk(int bytes) throws IOException, InterruptedException {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(
                Files.isExecutable(Path.of("/bin/mount"))
                        && run("/bin/mount", "-t", "tmpfs", "-o", "size=" + bytes, "tmpfs", disk.toString()) == 0,
                "needs the right to mount a file system");
        mounted = disk;
        return disk;
    }

    @AfterEach
    void unmount() throws IOException, InterruptedException {
        if (mounted != null) {
            assertThat(run("/bin/umount", mounted.toString())).isZero();
        }
    }

    @Test
    void aFullDisk() throws IOException, InterruptedException {
        studies();
        Path disk = disk(1000 * BLOCK);
        assertThat(earlier("disk/result")).isEqualTo(new Session(0, "", ""));
        Path result = disk.resolve("result");
        Map<String, Integer> before = content(result);
        Path filler = disk.resolve("filler");
        int refused = 0;
        for (int blocks : new int[] {0, 1, 3, 6, 12, 25, 50}) {
            Files.write(filler, new byte[(int) Files.getFileStore(disk).getUsableSpace() - blocks * BLOCK]);
            Session s = later("disk/result");
            if (s.code() == 0) {
                break;
            }
            refused++;
            assertThat(s.code()).isEqualTo(1);
            assertThat(s.out()).isEmpty();
            assertThat(s.err()).matches("Cannot read or write: disk/result/[^\n]*: No space left on device\n");
            assertThat(content(result)).as("with %d blocks", blocks).isEqualTo(before);
            assertThat(hidden(result)).isFalse();
            Files.delete(filler);
        }
        assertThat(refused).as("disks that were too small").isGreaterThanOrEqualTo(4);
        Files.deleteIfExists(filler);
        assertThat(later("disk/result")).isEqualTo(new Session(0, "", ""));
        assertThat(content(result)).containsKeys("factors.svg", "factors.png").isNotEqualTo(before);
        assertThat(hidden(result)).isFalse();
    }

    @Test
    void aFolderThatCannotBeWritten() throws IOException, InterruptedException {
        studies();
        Path disk = disk(1000 * BLOCK);
        assertThat(earlier("disk/result").code()).isZero();
        Map<String, Integer> before = content(disk.resolve("result"));
        assertThat(run("/bin/mount", "-o", "remount,ro", disk.toString())).isZero();
        for (String into : List.of("disk/result", "disk/new")) {
            assertThat(later(into))
                    .isEqualTo(new Session(1, "", "Cannot read or write: " + into + ": no permission\n"));
        }
        assertThat(content(disk.resolve("result"))).isEqualTo(before);
        assertThat(Session.files(disk)).doesNotContain("new").noneMatch(f -> f.contains("/."));
        assertThat(run("/bin/mount", "-o", "remount,rw", disk.toString())).isZero();
        assertThat(later("disk/result")).isEqualTo(new Session(0, "", ""));
    }

    @Test
    void aKillAtAnyMoment() throws IOException, InterruptedException {
        studies();
        assertThat(earlier("a").code()).isZero();
        assertThat(later("b").code()).isZero();
        Map<String, Integer> earlier = content(folder.resolve("a"));
        Map<String, Integer> later = content(folder.resolve("b"));
        assertThat(later.keySet()).containsAll(earlier.keySet());
        assertThat(later).hasSizeGreaterThan(earlier.size());

        long start = System.nanoTime();
        assertThat(child("c").waitFor()).isZero();
        long whole = (System.nanoTime() - start) / 1_000_000;
        assertThat(content(folder.resolve("c"))).isEqualTo(later);

        Random random = new Random(SEED);
        int untouched = 0;
        int finished = 0;
        int between = 0;
        for (int i = 0; i < KILLS + KILLS_WHILE_WRITING; i++) {
            String name = "result-" + i;
            Path result = folder.resolve(name);
            copy(folder.resolve("a"), result);
            Process child = child(name);
            if (i >= KILLS) {
                awaitWriting(result, child);
            }
            child.waitFor(random.nextInt((int) (i < KILLS ? whole * 11 / 10 : whole / 5)), TimeUnit.MILLISECONDS);
            child.destroyForcibly();
            assertThat(child.waitFor(20, TimeUnit.SECONDS)).isTrue();

            Map<String, Integer> found = content(result);
            if (found.equals(earlier)) {
                untouched++;
            } else if (found.equals(later)) {
                finished++;
            } else {
                between++;
                found.forEach((file, hash) -> assertThat(hash)
                        .as("%s after kill %s is whole", file, name)
                        .isIn(Collections.singletonList(earlier.get(file)), later.get(file)));
            }
            assertThat(later(name)).isEqualTo(new Session(0, "", ""));
            assertThat(content(result)).as("after the next run").isEqualTo(later);
            assertThat(hidden(result)).isFalse();
        }
        assertThat(untouched).as("killed before its end").isGreaterThan(KILLS / 2);
        assertThat(finished).as("killed after its end").isPositive();
        // all files are whole even then; the renames take less than a thousandth of a run, so it is next to never met
        assertThat(between).as("killed between two renames").isLessThanOrEqualTo(2);
    }

    private Process child(String into) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPath(),
                        Main.class.getName(),
                        "run",
                        "later.yaml",
                        "--quiet",
                        "--formats",
                        "png,svg",
                        "--into",
                        into)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** With absolute names, since the child works in another folder. */
    private static String classPath() {
        return String.join(
                File.pathSeparator,
                Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                        .map(p -> Path.of(p).toAbsolutePath().toString())
                        .toList());
    }

    private static void awaitWriting(Path result, Process child) throws IOException, InterruptedException {
        while (child.isAlive() && !hidden(result)) {
            Thread.sleep(1);
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectory(to);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(from)) {
            for (Path f : files) {
                Files.copy(f, to.resolve(f.getFileName()));
            }
        } catch (NoSuchFileException e) {
            throw new AssertionError("the result to copy is gone", e);
        }
    }
}
