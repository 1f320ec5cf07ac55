package eddyreach.model.read;

import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Shipped files and files written for a test. */
public final class ModelFiles {

    static final Path MATERIALS = Path.of("shared/materials.yaml");
    public static final Path REFERENCE = Path.of("models/p14-reference.yaml");

    private ModelFiles() {}

    public static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The reference switch with its note cut to one line, so that line numbers do not hang on the note's length. */
    public static String referenceWithShortNote() {
        return text(REFERENCE).replaceFirst("(?s)note: >-\\n.*?\\nmounting:", "note: >-\n  Invented.\nmounting:");
    }

    public static SourceFile write(Path folder, String name, String text) {
        return write(folder, name, text.getBytes(StandardCharsets.UTF_8));
    }

    public static SourceFile write(Path folder, String name, byte[] content) {
        try {
            return new SourceFile.OnDisk(Files.write(folder.resolve(name), content));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Materials materials() {
        return Materials.read(new SourceFile.OnDisk(MATERIALS));
    }

    /** The message without the folder, which differs from run to run. */
    public static String message(InputException e, Path folder) {
        return e.getMessage().replace(folder.toString().replace('\\', '/') + "/", "");
    }
}
