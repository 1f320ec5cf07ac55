package eddyreach.report.page;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Writes the files of one result so that a killed or failed run leaves the earlier result as it was, and so that nothing is touched that no
 * run has written.
 *
 * <p>All files are first written into a hidden folder inside the result folder, hence on the same volume; only when all
 * are there is each renamed to its place by one atomic step. So each file is always whole, the earlier one or the new
 * one, and foreign files in the folder stay. (Exchanging the whole folder would take two renames, with no result in
 * between, and would carry foreign files away.) The hidden folder is locked while its run lives; the next run removes
 * those whose lock is free.
 *
 * <p>A file is replaced or removed only when the {@link Manifest} proves that a run has written it. Before the first rename the manifest
 * takes the new files beside the earlier ones, so that after a kill in between the next run knows them all. No link is followed.
 */
public final class FolderWriter implements Closeable {

    /** Plain names with our endings: nothing else is ever written, or removed. */
    static final String OWN_NAME = "[A-Za-z0-9][A-Za-z0-9.-]*\\.(?:png|svg|dxf|csv|html|md|json)";

    private static final String PREFIX = ".eddyreach-";
    private static final String LOCK = "lock";
    private static final String LOCK_TEXT = "Eddyreach prepares files here: ";

    private final Path folder;
    private final Path hidden;
    private final FileChannel lock;
    private final String list;
    private final Map<String, String> hashes = new ConcurrentHashMap<>();

    private FolderWriter(Path folder, Path hidden, FileChannel lock, String list) {
        this.folder = folder;
        this.hidden = hidden;
        this.lock = lock;
        this.list = list;
    }

    /**
     * Makes the folder ready and clears what killed runs have left there.
     *
     * @param kind what is written, in a word; files of another kind in the same folder are left alone
     */
    public static FolderWriter open(Path folder, String kind) throws IOException {
        Files.createDirectories(folder);
        removeLeftovers(folder);
        Path hidden = Files.createTempDirectory(folder, PREFIX);
        FileChannel lock =
                FileChannel.open(hidden.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        lock.lock();
        lock.write(ByteBuffer.wrap(lockText(hidden).getBytes(StandardCharsets.UTF_8)));
        return new FolderWriter(folder, hidden, lock, list(kind));
    }

    private static String list(String kind) {
        return ".eddyreach." + kind + ".sha256";
    }

    /**
     * Looks whether files could be put in place, before any time is spent on what goes into them.
     *
     * @throws FileSystemException when something that no run has written has the name of one of them
     */
    public static void check(Path folder, String kind, List<String> names) throws IOException {
        Manifest earlier = Manifest.read(folder.resolve(list(kind)));
        for (String name : names) {
            checkPlace(folder.resolve(name), earlier);
        }
    }

    private static void checkPlace(Path place, Manifest earlier) throws IOException {
        if (Files.isDirectory(place, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileSystemException(place.toString(), null, "a folder of this name is in the way");
        }
        if (Files.exists(place, LinkOption.NOFOLLOW_LINKS) && !earlier.proves(place)) {
            throw Manifest.inTheWay(place);
        }
    }

    /** Writes one file under its temporary name; may be called from several threads. */
    public void add(String name, byte[] content) throws IOException {
        if (!name.matches(OWN_NAME)) {
            throw new IllegalArgumentException("not a name of a result's file: " + name);
        }
        write(name, content);
        hashes.put(name, Manifest.hash(content));
    }

    private void write(String name, byte[] content) throws IOException {
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
     * Puts all files in place and removes what earlier runs have written under other names.
     *
     * @param names the files added, in the order of renaming
     * @throws IOException when that cannot be done; with a folder or a foreign file in the place of a file nothing has been changed
     */
    public void commit(List<String> names) throws IOException {
        Manifest earlier = Manifest.read(folder.resolve(list));
        Manifest own = Manifest.of(hashes);
        Manifest both = earlier.and(own);
        for (String name : names) {
            checkPlace(folder.resolve(name), both);
        }
        put(both);
        for (String name : names) {
            Files.move(hidden.resolve(name), folder.resolve(name), StandardCopyOption.ATOMIC_MOVE);
        }
        TreeSet<String> obsolete = new TreeSet<>(earlier.names());
        names.forEach(obsolete::remove);
        for (String name : obsolete) {
            if (earlier.proves(folder.resolve(name))) {
                Files.delete(folder.resolve(name));
            }
        }
        put(own);
    }

    private void put(Manifest manifest) throws IOException {
        write(list, manifest.bytes());
        Files.move(hidden.resolve(list), folder.resolve(list), StandardCopyOption.ATOMIC_MOVE);
    }

    /** Removes the hidden folder with everything that was not put in place. */
    @Override
    public void close() throws IOException {
        lock.close();
        delete(hidden);
    }

    private static String lockText(Path hidden) {
        return LOCK_TEXT + hidden.getFileName() + "\n";
    }

    private static void removeLeftovers(Path folder) throws IOException {
        try (DirectoryStream<Path> old = Files.newDirectoryStream(folder, PREFIX + "*")) {
            for (Path hidden : old) {
                if (Files.isDirectory(hidden, LinkOption.NOFOLLOW_LINKS) && abandoned(hidden)) {
                    delete(hidden);
                }
            }
        }
    }

    /** True for a folder that a run has made, and that no living run has locked. */
    private static boolean abandoned(Path hidden) throws IOException {
        Path lock = hidden.resolve(LOCK);
        byte[] text = lockText(hidden).getBytes(StandardCharsets.UTF_8);
        if (!Files.isRegularFile(lock, LinkOption.NOFOLLOW_LINKS) || Files.size(lock) != text.length) {
            return false;
        }
        try (FileChannel channel =
                FileChannel.open(lock, StandardOpenOption.READ, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            ByteBuffer found = ByteBuffer.allocate(text.length);
            return channel.tryLock() != null
                    && channel.read(found) == text.length
                    && found.flip().equals(ByteBuffer.wrap(text));
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (NoSuchFileException e) {
            // another run is removing it
            return false;
        }
    }

    /** Another run may be removing the same leftovers: what is gone already is no error. What no run writes stays, and the folder with it. */
    private static void delete(Path hidden) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(hidden)) {
            for (Path file : files) {
                String name = file.getFileName().toString();
                if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                        && (name.matches(OWN_NAME) || name.equals(LOCK) || name.startsWith(".eddyreach."))) {
                    Files.deleteIfExists(file);
                }
            }
            Files.deleteIfExists(hidden);
        } catch (NoSuchFileException e) {
            return;
        } catch (DirectoryNotEmptyException e) {
            return;
        }
    }
}
