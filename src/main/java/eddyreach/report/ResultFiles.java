package eddyreach.report;

import eddyreach.study.StudyResult;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Writes everything about a result into one folder: tables, a JSON document and pictures. */
public final class ResultFiles {

    private static final String DOCUMENT = "result.json";

    private ResultFiles() {}

    /** A file to be made. */
    private record Entry(String name, Supplier<byte[]> content) {}

    /**
     * Writes the result; what an earlier run wrote and this one does not, is removed. Pictures are drawn on all cores.
     *
     * @param folder made if it does not exist; other files in it are left alone
     * @param formats formats of the pictures; none for tables only
     * @return the files, pictures first and the JSON document last
     * @throws IOException when a file cannot be written; the earlier result is then still there
     */
    public static List<Path> write(StudyResult result, Path folder, Set<PictureWriter.Format> formats)
            throws IOException {
        List<Entry> entries = new ArrayList<>();
        List<Picture> pictures = Presentation.of(result).pictures();
        for (PictureWriter.Format format : formats) {
            for (Picture picture : pictures) {
                entries.add(new Entry(picture.name() + format.ending(), () -> PictureWriter.bytes(picture, format)));
            }
        }
        return write(result, folder, entries);
    }

    private static List<Path> write(StudyResult result, Path folder, List<Entry> pictures) throws IOException {
        List<Entry> entries = new ArrayList<>(pictures);
        Presentation.of(result).tables().forEach((name, table) -> entries.add(text(name, table)));
        List<String> names = new ArrayList<>(entries.stream().map(Entry::name).toList());
        names.add(DOCUMENT);
        entries.add(text(DOCUMENT, () -> ResultJson.of(result, names)));
        try (FolderWriter writer = FolderWriter.open(folder)) {
            entries.parallelStream().forEach(e -> add(writer, e));
            List<String> obsolete = earlier(folder);
            obsolete.addAll(
                    writer.interrupted().stream().filter(ResultFiles::own).toList());
            obsolete.removeAll(names);
            writer.commit(names, obsolete);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return names.stream().map(folder::resolve).toList();
    }

    private static Entry text(String name, Supplier<String> text) {
        return new Entry(name, () -> text.get().getBytes(StandardCharsets.UTF_8));
    }

    private static void add(FolderWriter writer, Entry entry) {
        try {
            writer.add(entry.name(), entry.content().get());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * The files of the result that lies in the folder, from the first list of its document; empty when there is none or
     * it cannot be read. Parsing stops after that list.
     */
    private static List<String> earlier(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        Path document = folder.resolve(DOCUMENT);
        if (!Files.isRegularFile(document)) {
            return names;
        }
        try (Reader reader = Files.newBufferedReader(document, StandardCharsets.UTF_8)) {
            boolean inside = false;
            for (Event event : new Parse(LoadSettings.builder().build()).parseReader(reader)) {
                if (event.getEventId() == Event.ID.SequenceStart) {
                    inside = true;
                } else if (event.getEventId() == Event.ID.SequenceEnd) {
                    return names;
                } else if (inside && event instanceof ScalarEvent scalar && own(scalar.getValue())) {
                    names.add(scalar.getValue());
                }
            }
        } catch (YamlEngineException e) {
            names.clear();
        }
        return names;
    }

    /** Only plain names with our endings: a damaged document must not lead to another folder. */
    private static boolean own(String name) {
        return name.matches("[A-Za-z0-9][A-Za-z0-9.-]*\\.(png|svg|csv|json)");
    }
}
