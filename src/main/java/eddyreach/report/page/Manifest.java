package eddyreach.report.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Which files of a folder runs have written, with a hash of their contents: what proves that a file is a run's own. The file is a list
 * as {@code sha256sum} reads it. A name may stand in it with two hashes: either may lie there after a run that was killed.
 */
final class Manifest {

    private static final String HEAD =
            "# Eddyreach wrote these files; a run replaces or removes them only while unchanged";
    private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (" + FolderWriter.OWN_NAME + ")");
    private static final long LARGEST = 1_000_000;

    private final Map<String, Set<String>> hashes;

    private Manifest(Map<String, Set<String>> hashes) {
        this.hashes = hashes;
    }

    /** Of the files of one run, by name. */
    static Manifest of(Map<String, String> hashes) {
        Map<String, Set<String>> each = new TreeMap<>();
        hashes.forEach((name, hash) -> each.put(name, Set.of(hash)));
        return new Manifest(each);
    }

    /**
     * Reads what lies in a folder; empty when there is none.
     *
     * @throws FileSystemException when something else has its name
     */
    static Manifest read(Path file) throws IOException {
        Map<String, Set<String>> found = new TreeMap<>();
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new Manifest(found);
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > LARGEST) {
            throw inTheWay(file);
        }
        String text = new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
        if (!text.startsWith(HEAD)) {
            throw inTheWay(file);
        }
        for (String line : text.lines().toList()) {
            Matcher m = LINE.matcher(line);
            if (m.matches()) {
                found.computeIfAbsent(m.group(2), n -> new TreeSet<>()).add(m.group(1));
            }
        }
        return new Manifest(found);
    }

    /** The refusal of a file that no run has written. */
    static FileSystemException inTheWay(Path file) {
        return new FileSystemException(
                file.toString(),
                null,
                "a file of this name is in the way, and not as a run has left it; move it away or name another folder");
    }

    Set<String> names() {
        return hashes.keySet();
    }

    /** These and others. */
    Manifest and(Manifest other) {
        Map<String, Set<String>> all = new TreeMap<>();
        for (Manifest m : new Manifest[] {this, other}) {
            m.hashes.forEach((name, set) ->
                    all.computeIfAbsent(name, n -> new TreeSet<>()).addAll(set));
        }
        return new Manifest(all);
    }

    /** True for a file, not a link, that holds what a run has written under its name. */
    boolean proves(Path file) throws IOException {
        Set<String> known = hashes.getOrDefault(file.getFileName().toString(), Set.of());
        return !known.isEmpty()
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                && known.contains(hash(Files.readAllBytes(file)));
    }

    byte[] bytes() {
        return hashes.entrySet().stream()
                .flatMap(e -> e.getValue().stream().map(hash -> hash + "  " + e.getKey() + "\n"))
                .collect(Collectors.joining("", HEAD + "\n", ""))
                .getBytes(StandardCharsets.UTF_8);
    }

    static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("each Java platform has SHA-256", e);
        }
    }
}
