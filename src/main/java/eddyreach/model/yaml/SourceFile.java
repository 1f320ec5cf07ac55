package eddyreach.model.yaml;

import eddyreach.units.Texts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A file to read: on disk, or shipped within the program. */
public sealed interface SourceFile {

    /** Largest file that is read, bytes. */
    int LARGEST = 1 << 20;

    /** The name shown in messages, with forward slashes. */
    String name();

    /**
     * The whole content.
     *
     * @throws InputException when the file does not exist, cannot be read or is larger than {@link #LARGEST}
     */
    byte[] content();

    /**
     * A file named relative to this one's folder.
     *
     * @param relative such as {@code ../models/my-switch.yaml}
     * @throws InputException when the name is no path, or leaves the shipped files
     */
    SourceFile sibling(String relative);

    /** The file's name without folder and ending: the id of a switch or study. */
    default String id() {
        String last = name().substring(name().lastIndexOf('/') + 1);
        int dot = last.lastIndexOf('.');
        return dot > 0 ? last.substring(0, dot) : last;
    }

    /** A file on disk. */
    record OnDisk(Path path) implements SourceFile {

        @Override
        public String name() {
            return path.toString().replace('\\', '/');
        }

        @Override
        public byte[] content() {
            if (Files.isDirectory(path)) {
                throw new InputException(name(), "is a folder, needs a file");
            }
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                throw new InputException(name(), "is a pipe or a device, needs a file");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return limited(name(), in);
            } catch (NoSuchFileException e) {
                throw new InputException(name(), "file not found");
            } catch (AccessDeniedException e) {
                throw new InputException(name(), "no permission to read the file");
            } catch (IOException e) {
                throw new InputException(name(), "cannot be read");
            }
        }

        @Override
        public SourceFile sibling(String relative) {
            Path folder = path.toAbsolutePath().getParent();
            Path resolved =
                    SourceFile.path(relative).isAbsolute() ? SourceFile.path(relative) : folder.resolve(relative);
            Path here = Path.of("").toAbsolutePath();
            Path normal = resolved.normalize();
            return new OnDisk(!path.isAbsolute() && normal.startsWith(here) ? here.relativize(normal) : normal);
        }
    }

    /** A file within the program, under {@code eddyreach/shipped}. */
    record Shipped(String name) implements SourceFile {

        public static final String ROOT = "eddyreach/shipped/";

        /** True when the program holds it. */
        public boolean exists() {
            return SourceFile.class.getClassLoader().getResource(ROOT + name) != null;
        }

        @Override
        public byte[] content() {
            try (InputStream in = SourceFile.class.getClassLoader().getResourceAsStream(ROOT + name)) {
                if (in == null) {
                    throw new InputException(name, "file not found among the shipped files");
                }
                return limited(name, in);
            } catch (IOException e) {
                throw new InputException(name, "cannot be read");
            }
        }

        @Override
        public SourceFile sibling(String relative) {
            Path folder = Path.of("/" + name).getParent();
            if (SourceFile.path(relative).isAbsolute()) {
                return new OnDisk(SourceFile.path(relative));
            }
            int depth = folder.getNameCount();
            for (Path step : SourceFile.path(relative)) {
                depth += step.toString().equals("..") ? -1 : step.toString().equals(".") ? 0 : 1;
                if (depth < 0) {
                    throw new InputException(relative, "leads out of the shipped files");
                }
            }
            String normal = folder.resolve(relative).normalize().toString().replace('\\', '/');
            return new Shipped(normal.substring(normal.indexOf('/') + 1));
        }
    }

    private static byte[] limited(String name, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            throw new InputException(name, "larger than 1 MB, the most that is read");
        }
        return bytes;
    }

    /** The text as a path; an InputException instead of an error of the file system. */
    static Path path(String text) {
        if (text.isBlank()) {
            throw new InputException("(no name)", "the name of a file is empty");
        }
        if (text.chars().anyMatch(Texts::isHidden)) {
            throw new InputException(Texts.excerpt(text), "the name of the file holds a control character");
        }
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new InputException(Texts.excerpt(text), "is not the name of a file");
        }
    }
}
