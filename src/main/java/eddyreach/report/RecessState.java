package eddyreach.report;

import eddyreach.field.Resolution;
import eddyreach.model.RecessInput;
import eddyreach.study.Checkpoint;
import eddyreach.study.MountCase;
import eddyreach.study.RecessCell;
import eddyreach.study.SwitchDistance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * The cells of an unfinished map in a file of the result folder, so that the next run goes on from there.
 *
 * <p>The file names what it belongs to by a hash of everything that determines the result, and ends with a hash of itself. It is written
 * beside its place and put there by one atomic step, every few seconds and when a run is stopped, and removed when the map is done.
 */
public final class RecessState implements Checkpoint {

    static final String NAME = "recess.state";
    private static final String TEMPORARY = ".recess.state.new";
    private static final String HEAD = "eddyreach recess state 1";
    private static final long INTERVAL = 3_000_000_000L;
    private static final long LARGEST = 20_000_000;
    private static final int FIELDS = 13;

    private final Path folder;
    private final String key;
    private final BooleanSupplier stop;
    private final List<RecessCell> kept;
    private final Found found;
    private final List<RecessCell> cells;
    private long saved = System.nanoTime();

    /** What an earlier run has left. */
    public enum Found {
        NOTHING,
        CELLS,
        OTHER_STUDY,
        DAMAGED
    }

    private record Read(Found found, List<RecessCell> cells) {}

    /**
     * Looks for what an earlier run has left.
     *
     * @param folder the result folder; it need not exist yet
     * @param study what is to be computed
     * @param stop whether the run is asked to stop
     * @throws IOException when a file is there but cannot be read
     */
    public RecessState(Path folder, RecessInput study, BooleanSupplier stop) throws IOException {
        this.folder = folder;
        this.stop = stop;
        key = hash(RecessState.class.getPackage().getImplementationVersion() + "\n" + Resolution.LADDER + "\n" + study);
        Read read = read();
        found = read.found();
        kept = read.cells();
        cells = new ArrayList<>(kept);
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
    public List<RecessCell> kept() {
        return kept;
    }

    /** Takes a cell and now and then writes the file; an unchecked exception tells when that fails. */
    @Override
    public synchronized void keep(RecessCell cell) {
        cells.add(cell);
        if (System.nanoTime() - saved > INTERVAL) {
            try {
                save();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /**
     * Writes all cells.
     *
     * @throws IOException when that fails; an earlier file is then still there
     */
    public synchronized void save() throws IOException {
        StringBuilder text = new StringBuilder(HEAD + "\nkey " + key + "\n");
        cells.forEach(c -> text.append(line(c)).append('\n'));
        text.append("end ").append(hash(text.toString())).append('\n');
        Files.createDirectories(folder);
        Path temporary = folder.resolve(TEMPORARY);
        Files.writeString(temporary, text);
        Files.move(temporary, folder.resolve(NAME), StandardCopyOption.ATOMIC_MOVE);
        saved = System.nanoTime();
    }

    /**
     * Removes the file once the map is done.
     *
     * @throws IOException when that fails
     */
    public void remove() throws IOException {
        Files.deleteIfExists(folder.resolve(TEMPORARY));
        Files.deleteIfExists(folder.resolve(NAME));
    }

    private static String line(RecessCell c) {
        SwitchDistance d = c.distance();
        return String.join(
                " ",
                String.valueOf(c.panel()),
                String.valueOf(c.diameter()),
                String.valueOf(c.depth()),
                String.valueOf(c.step()),
                String.valueOf(c.used()),
                c.verdict().name(),
                d.outcome().name(),
                String.valueOf(d.on()),
                String.valueOf(d.off()),
                String.valueOf(d.onError()),
                String.valueOf(d.offError()),
                String.valueOf(c.shift()),
                String.valueOf(c.lever()));
    }

    private Read read() throws IOException {
        Path file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
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
        List<String> lines = text.substring(0, end).lines().toList();
        if (lines.size() < 2 || !lines.get(0).equals(HEAD) || !lines.get(1).equals("key " + key)) {
            return new Read(Found.OTHER_STUDY, List.of());
        }
        try {
            return new Read(
                    Found.CELLS, lines.stream().skip(2).map(RecessState::cell).toList());
        } catch (IllegalArgumentException e) {
            return damaged;
        }
    }

    private static RecessCell cell(String line) {
        String[] f = line.split(" ", -1);
        if (f.length != FIELDS) {
            throw new IllegalArgumentException(f.length + " fields");
        }
        return new RecessCell(
                Integer.parseInt(f[0]),
                Integer.parseInt(f[1]),
                Integer.parseInt(f[2]),
                Integer.parseInt(f[3]),
                Double.parseDouble(f[4]),
                MountCase.Verdict.valueOf(f[5]),
                new SwitchDistance(
                        SwitchDistance.Outcome.valueOf(f[6]),
                        Double.parseDouble(f[7]),
                        Double.parseDouble(f[8]),
                        Double.parseDouble(f[9]),
                        Double.parseDouble(f[10])),
                Double.parseDouble(f[11]),
                Double.parseDouble(f[12]));
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
