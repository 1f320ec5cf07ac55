package eddyreach.cli;

import eddyreach.model.yaml.InputException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Decides where the files of a result go, and that they go nowhere else. */
final class OutputFolder {

    /** Where results go unless the user names a folder, below the working folder. */
    static final String RESULTS = "results";

    private OutputFolder() {}

    /**
     * The folder a user names.
     *
     * @throws InputException when it is no name of a folder
     */
    static Path named(String name, Path workingFolder) {
        if (name.isBlank()) {
            throw new InputException("--into", "the name of the folder is empty");
        }
        try {
            return workingFolder.resolve(name);
        } catch (InvalidPathException e) {
            throw new InputException("--into", "is not the name of a folder");
        }
    }

    /**
     * The folder of one study below a base.
     *
     * @throws InputException when the study's id leads out of the base
     */
    static Path below(Path base, String id) {
        Path folder = base.resolve(id);
        Path whole = base.toAbsolutePath().normalize();
        if (!whole.equals(folder.toAbsolutePath().normalize().getParent()) || leavesByLink(folder, base)) {
            throw new InputException(folder.toString(), "lies outside the folder " + base + ", where results go");
        }
        return folder;
    }

    /** A symbolic link in the base may not lead results elsewhere; the base itself may be one. */
    private static boolean leavesByLink(Path folder, Path base) {
        try {
            return Files.exists(folder) && !folder.toRealPath().startsWith(base.toRealPath());
        } catch (IOException e) {
            return true;
        }
    }

    /**
     * Looks whether a folder can be written, before any time is spent on computing.
     *
     * @throws IOException when it cannot
     */
    static void check(Path folder) throws IOException {
        Path existing = folder.toAbsolutePath();
        while (existing != null && !Files.exists(existing)) {
            existing = existing.getParent();
        }
        if (existing != null && !Files.isDirectory(existing)) {
            throw new FileAlreadyExistsException(existing.toString());
        }
        if (existing == null || !Files.isWritable(existing)) {
            throw new AccessDeniedException(folder.toString());
        }
    }
}
