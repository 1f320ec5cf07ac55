package eddyreach.study;

import eddyreach.field.axial.Resolution;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/**
 * The finished pieces of an unfinished run in a file of the result folder, so that the next run goes on from there.
 *
 * <p>The file names what it belongs to by a hash of everything that determines the result, and ends with a hash of itself. It is written
 * beside its place and put there by one atomic step, every second and when a run is stopped, and removed when the run is done.
 */
public final class RunState implements Checkpoint {

    public static final String NAME = "run.state";
    private static final String HEAD = "eddyreach run state 1";
    private static final long INTERVAL = 1_000_000_000L;
    private static final long LARGEST = 20_000_000;

    private final Path folder;
    private final String key;
    private final BooleanSupplier stop;
    private final Predicate<String> readable;
    private final List<String> kept;
    private final Found found;
    private final List<String> lines;
    private long saved = System.nanoTime();

    /** What an earlier run has left. */
    public enum Found {
        NOTHING,
        LINES,
        OTHER_STUDY,
        DAMAGED
    }

    private record Read(Found found, List<String> lines) {}

    /**
     * Looks for what an earlier run has left.
     *
     * @param folder the result folder; it need not exist yet
     * @param study what is to be computed; one that can go on
     * @param readable whether a kept line makes sense to the study
     * @param stop whether the run is asked to stop
     * @throws IOException when a file is there but cannot be read, or is of another kind
     */
    public RunState(Path folder, StudyInput study, Predicate<String> readable, BooleanSupplier stop)
            throws IOException {
        this.folder = folder;
        this.stop = stop;
        this.readable = readable;
        key = hash(RunState.class.getPackage().getImplementationVersion() + "\n" + Resolution.LADDER + "\n" + study);
        Read read = read();
        found = read.found();
        kept = read.lines();
        lines = new ArrayList<>(kept);
    }

    /** What was there. */
    public Found found() {
        return found;
    }

    @Override
    public boolean stop() {
        return stop.getAsBoolean();
    }

    @Override
    public List<String> kept() {
        return kept;
    }

    /** Takes a line and now and then writes the file; an unchecked exception tells when that fails. */
    @Override
    public synchronized void keep(String line) {
        lines.add(line);
        if (System.nanoTime() - saved > INTERVAL) {
            try {
                save();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /**
     * Writes all lines.
     *
     * @throws IOException when that fails; an earlier file is then still there
     */
    public synchronized void save() throws IOException {
        StringBuilder text = new StringBuilder(HEAD + "\nkey " + key + "\n");
        lines.forEach(l -> text.append(l).append('\n'));
        // the hash is that of the text before this line
        String end = "end " + hash(text.toString()) + "\n";
        text.append(end);
        Files.createDirectories(folder);
        checkPlace();
        Path temporary = Files.createTempFile(folder, "." + NAME + "-", "");
        try {
            Files.writeString(temporary, text);
            Files.move(temporary, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(temporary);
        }
        saved = System.nanoTime();
    }

    /**
     * Removes the file once the map is done.
     *
     * @throws IOException when that fails
     */
    public void remove() throws IOException {
        checkPlace();
        Files.deleteIfExists(folder.resolve(NAME));
    }

    /** Only a state is replaced or removed, however damaged; a link or a foreign file of its name is left alone. */
    private void checkPlace() throws IOException {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        boolean state = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        if (state) {
            try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
                byte[] head = (HEAD + "\n").getBytes(StandardCharsets.UTF_8);
                state = Arrays.equals(head, in.readNBytes(head.length));
            }
        }
        if (!state) {
            throw new FileSystemException(
                    file.toString(),
                    null,
                    "a file of this name is in the way, and not of an unfinished run; move it away or name another folder");
        }
    }

    private Read read() throws IOException {
        checkPlace();
        Path file = folder.resolve(NAME);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new Read(Found.NOTHING, List.of());
        }
        Read damaged = new Read(Found.DAMAGED, List.of());
        if (Files.size(file) > LARGEST) {
            return damaged;
        }
        String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        int end = text.lastIndexOf("end ");
        if (end < 0 || !text.substring(end).equals("end " + hash(text.substring(0, end)) + "\n")) {
            return damaged;
        }
        List<String> rest = text.substring(0, end).lines().toList();
        if (rest.size() < 2 || !rest.get(0).equals(HEAD) || !rest.get(1).equals("key " + key)) {
            return new Read(Found.OTHER_STUDY, List.of());
        }
        List<String> kept = rest.subList(2, rest.size());
        return kept.stream().allMatch(readable) ? new Read(Found.LINES, kept) : damaged;
    }

    private static String hash(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("each Java platform has SHA-256", e);
        }
    }
}
