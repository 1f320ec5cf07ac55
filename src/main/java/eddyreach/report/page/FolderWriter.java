package eddyreach.report.page;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes the files of one result so that a killed or failed run leaves the earlier result as it was.
 *
 * <p>All files are first written into a hidden folder inside the result folder, hence on the same volume; only when all
 * are there is each renamed to its place by one atomic step. So each file is always whole, the earlier one or the new
 * one, and foreign files in the folder stay. (Exchanging the whole folder would take two renames, with no result in
 * between, and would carry foreign files away.) The hidden folder is locked while its run lives; the next run removes
 * those whose lock is free.
 *
 * <p>A run killed between two renames leaves new files beside earlier ones, each whole. So that none of them stays for
 * ever, the names concerned are noted in the hidden folder before the first rename, and the next run takes them over.
 */
public final class FolderWriter implements Closeable {

    private static final String PREFIX = ".eddyreach-";
    private static final String LOCK = "lock";
    private static final String NAMES = "names";

    private final Path folder;
    private final Path hidden;
    private final FileChannel lock;
    private final List<String> interrupted;

    private FolderWriter(Path folder, Path hidden, FileChannel lock, List<String> interrupted) {
        this.folder = folder;
        this.hidden = hidden;
        this.lock = lock;
        this.interrupted = interrupted;
    }

    /** Makes the folder ready and clears what killed runs have left there. */
    public static FolderWriter open(Path folder) throws IOException {
        Files.createDirectories(folder);
        List<String> interrupted = removeLeftovers(folder);
        Path hidden = Files.createTempDirectory(folder, PREFIX);
        FileChannel lock = FileChannel.open(hidden.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        lock.lock();
        return new FolderWriter(folder, hidden, lock, interrupted);
    }

    /** Names of the files that killed runs may have put in place or left there, as far as they are known. */
    public List<String> interrupted() {
        return interrupted;
    }

    /** Writes one file under its temporary name; may be called from several threads. */
    public void add(String name, byte[] content) throws IOException {
        try {
            Files.write(hidden.resolve(name), content);
        } catch (FileSystemException e) {
            throw e;
        } catch (IOException e) {
            // a full disk is told without the file
            throw new FileSystemException(folder.resolve(name).toString(), null, e.getMessage());
        }
    }

    /**
     * Puts all files in place and removes others.
     *
     * @param names the files added, in the order of renaming
     * @param obsolete files to remove from the folder
     * @throws IOException when that cannot be done; with a folder in the place of a file nothing has been changed
     */
    public void commit(List<String> names, List<String> obsolete) throws IOException {
        for (String name : names) {
            Path place = folder.resolve(name);
            if (Files.isDirectory(place)) {
                throw new FileSystemException(place.toString(), null, "a folder of this name is in the way");
            }
        }
        Files.write(
                hidden.resolve(NAMES),
                Stream.concat(names.stream(), obsolete.stream()).toList());
        for (String name : names) {
            Files.move(hidden.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        }
        for (String name : obsolete) {
            Files.deleteIfExists(folder.resolve(name));
        }
    }

    /** Removes the hidden folder with everything that was not put in place. */
    @Override
    public void close() throws IOException {
        lock.close();
        delete(hidden);
    }

    private static List<String> removeLeftovers(Path folder) throws IOException {
        List<String> interrupted = new ArrayList<>();
        try (DirectoryStream<Path> old = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path hidden : old) {
                if (Files.isDirectory(hidden) && !inUse(hidden.resolve(LOCK))) {
                    interrupted.addAll(names(hidden));
                    delete(hidden);
                }
            }
        }
        return interrupted;
    }

    /** Decoded without complaint: a list that the kill cut off may end within a character. */
    private static List<String> names(Path hidden) throws IOException {
        Path list = hidden.resolve(NAMES);
        return Files.exists(list)
                ? new String(Files.readAllBytes(list), StandardCharsets.UTF_8)
                        .lines()
                        .toList()
                : List.of();
    }

    private static boolean inUse(Path lock) throws IOException {
        if (!Files.exists(lock)) {
            return false;
        }
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE)) {
            return channel.tryLock() == null;
        } catch (OverlappingFileLockException e) {
            return true;
        }
    }

    /** Another run may be removing the same leftovers: what is gone already is no error. */
    private static void delete(Path hidden) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(hidden)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        } catch (NoSuchFileException e) {
            return;
        }
        Files.deleteIfExists(hidden);
    }
}
