package eddyreach.model.read;

import eddyreach.model.values.SwitchModel;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.units.Texts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds switches, mounts, studies and materials: in the folders {@code models}, {@code studies} and {@code shared} of a working
 * folder first, then among the files shipped within the program. A reference is either an id (letters, digits,
 * hyphens, underscores: {@code p14-reference}) or a path of a YAML file ({@code ./my-switch.yaml}).
 */
public final class Library {

    private static final String ENDING = ".yaml";
    /** Path of the materials, below the working folder and within the program. */
    public static final String MATERIALS = "shared/materials.yaml";

    private static final Pattern MOUNT = Pattern.compile("(?m)^eddyreach:[ \\t]*mount[ \\t\\r]*$");
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_-]+");

    private final Path workingFolder;

    /** For a working folder; the empty path is the current one. */
    public Library(Path workingFolder) {
        this.workingFolder = workingFolder;
    }

    /** Ids of all switches that can be named without a path, sorted. */
    public List<String> switches() {
        return ids("models").stream().filter(id -> !isMount(id)).toList();
    }

    /** Ids of all mounts that can be named without a path, sorted; they lie beside the switches. */
    public List<String> mounts() {
        return ids("models").stream().filter(this::isMount).toList();
    }

    /** True when a file says that it holds a mount; one that cannot be read counts as a switch, whose reader tells why. */
    private boolean isMount(String id) {
        try {
            String text = new String(byId("models", id, "file").content(), StandardCharsets.UTF_8);
            return MOUNT.matcher(text).find();
        } catch (InputException e) {
            return false;
        }
    }

    /** Ids of all studies that can be named without a path, sorted. */
    public List<String> studies() {
        return ids("studies");
    }

    /**
     * The shipped materials, and those of {@code shared/materials.yaml} in the working folder, which come first where both know an id.
     *
     * @throws InputException when they are not all in order
     */
    public Materials materials() {
        Materials shipped = Materials.read(new SourceFile.Shipped(MATERIALS));
        Path own = workingFolder.resolve(MATERIALS);
        return Files.isRegularFile(own) ? shipped.with(Materials.read(new SourceFile.OnDisk(own))) : shipped;
    }

    /**
     * Reads a switch.
     *
     * @param reference its id or the path of its file
     * @throws InputException when there is none, or with everything that is wrong in it
     */
    public SwitchModel switchModel(String reference) {
        return SwitchReader.read(switchFile(reference), materials());
    }

    /** The file of a switch, see {@link #switchModel}. */
    public SourceFile switchFile(String reference) {
        return find("models", reference, "switch");
    }

    /**
     * The file of a switch that another file names: an id, or a path relative to the naming file.
     *
     * @throws InputException when there is none of that id, or the reference is no path
     */
    public SourceFile switchFile(String reference, SourceFile from) {
        return isId(reference) ? byId("models", reference, "switch") : from.sibling(reference);
    }

    /**
     * The file of a mount, by id or path.
     *
     * @throws InputException when there is none of that id, or the reference is no path
     */
    public SourceFile mountFile(String reference) {
        return find("models", reference, "mount");
    }

    /** The file of a mount that another file names: an id, or a path relative to the naming file. */
    public SourceFile mountFile(String reference, SourceFile from) {
        return isId(reference) ? byId("models", reference, "mount") : from.sibling(reference);
    }

    /**
     * The readable name of a mount.
     *
     * @throws InputException when there is none of this id, or with everything that is wrong in it
     */
    public String mountName(String id) {
        return MountReader.name(byId("models", id, "mount"), materials());
    }

    /** The file of a study, by id or path. */
    public SourceFile studyFile(String reference) {
        return find("studies", reference, "study");
    }

    /**
     * The file of a reference whatever its kind: the path of a file, or the id of a study, a switch or a mount.
     *
     * @throws InputException when no study, switch or mount has this id, or the reference is no path
     */
    public SourceFile file(String reference) {
        if (isId(reference)) {
            return ids("models").contains(reference) && !studies().contains(reference)
                    ? switchFile(reference)
                    : studyFile(reference);
        }
        for (String folder : List.of("models", "studies")) {
            SourceFile file = find(folder, reference, "file");
            if (file instanceof SourceFile.Shipped) {
                return file;
            }
        }
        return find("shared", reference, "file");
    }

    private SourceFile find(String folder, String reference, String what) {
        if (isId(reference)) {
            return byId(folder, reference, what);
        }
        SourceFile file = new SourceFile.OnDisk(workingFolder.resolve(SourceFile.path(reference)));
        boolean here = Files.exists(workingFolder.resolve(SourceFile.path(reference)));
        // a path such as models/p14-reference.yaml works from any folder
        return !here && shipped(folder).contains(reference)
                ? new SourceFile.Shipped(reference.replace('\\', '/'))
                : file;
    }

    private SourceFile byId(String folder, String id, String what) {
        Path path = workingFolder.resolve(folder).resolve(id + ENDING);
        if (Files.isRegularFile(path)) {
            return new SourceFile.OnDisk(path);
        }
        SourceFile.Shipped within = new SourceFile.Shipped(folder + "/" + id + ENDING);
        if (within.exists()) {
            return within;
        }
        List<String> known = what.equals("switch") ? switches() : what.equals("mount") ? mounts() : ids(folder);
        String hint = Texts.nearest(id, known)
                .map(near -> "did you mean " + near + "?")
                .orElse("known: " + String.join(", ", known));
        throw new InputException(id, "there is no " + what + " of this name; " + hint);
    }

    private static boolean isId(String reference) {
        return ID.matcher(reference).matches();
    }

    private List<String> ids(String folder) {
        Set<String> ids = new TreeSet<>();
        Path path = workingFolder.resolve(folder);
        if (Files.isDirectory(path)) {
            try (Stream<Path> files = Files.list(path)) {
                files.map(f -> f.getFileName().toString())
                        .filter(f -> f.endsWith(ENDING))
                        .map(f -> f.substring(0, f.length() - ENDING.length()))
                        // what is no id can only be named by its path
                        .filter(Library::isId)
                        .forEach(ids::add);
            } catch (IOException e) {
                throw new InputException(path.toString(), "the folder cannot be read");
            }
        }
        shipped(folder).forEach(n -> ids.add(n.substring(folder.length() + 1, n.length() - ENDING.length())));
        return List.copyOf(ids);
    }

    /** Names such as {@code models/p14-reference.yaml} of the files within the program. */
    private static Set<String> shipped(String folder) {
        String anchor = SourceFile.Shipped.ROOT + MATERIALS;
        URL url = Library.class.getClassLoader().getResource(anchor);
        if (url == null) {
            throw new IllegalStateException("the program was packed without " + anchor);
        }
        try {
            if (url.openConnection() instanceof JarURLConnection jar) {
                // entries are listed by name, since a jar need not hold entries for its folders
                jar.setUseCaches(false);
                try (var file = jar.getJarFile()) {
                    return select(
                            folder,
                            file.stream()
                                    .map(e -> e.getName())
                                    .filter(n -> n.startsWith(SourceFile.Shipped.ROOT))
                                    .map(n -> n.substring(SourceFile.Shipped.ROOT.length())));
                }
            }
            Path root = Path.of(url.toURI()).getParent().getParent();
            if (!Files.isDirectory(root.resolve(folder))) {
                return Set.of();
            }
            try (Stream<Path> files = Files.list(root.resolve(folder))) {
                return select(folder, files.map(f -> folder + "/" + f.getFileName()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Set<String> select(String folder, Stream<String> names) {
        Set<String> selected = new TreeSet<>();
        names.filter(n -> n.startsWith(folder + "/") && n.endsWith(ENDING)).forEach(selected::add);
        return selected;
    }
}
