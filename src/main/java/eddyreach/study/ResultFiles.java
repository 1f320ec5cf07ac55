package eddyreach.study;

import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.page.FolderWriter;
import eddyreach.report.page.HtmlPage;
import eddyreach.report.page.MarkdownPage;
import eddyreach.report.page.Page;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** Writes everything about a result into one folder: pictures, tables, a page to send on and a JSON document. */
public final class ResultFiles {

    private static final String DOCUMENT = "result.json";
    private static final String HTML = "page.html";
    private static final String MARKDOWN = "page.md";
    private static final String PNG = PictureWriter.Format.PNG.ending();
    private static final String SVG = PictureWriter.Format.SVG.ending();

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
        List<Picture> pictures =
                formats.isEmpty() ? List.of() : result.presentation().pictures();
        List<Entry> entries = new ArrayList<>();
        for (PictureWriter.Format format : formats) {
            for (Picture picture : pictures) {
                entries.add(new Entry(picture.name() + format.ending(), () -> PictureWriter.bytes(picture, format)));
            }
        }
        if (!formats.isEmpty()) {
            result.presentation().drawings().forEach((name, drawing) -> entries.add(text(name, drawing)));
        }
        return write(result, folder, pictures, entries);
    }

    private static List<Path> write(StudyResult result, Path folder, List<Picture> pictures, List<Entry> files)
            throws IOException {
        List<Entry> texts = new ArrayList<>();
        result.presentation().tables().forEach((name, table) -> texts.add(text(name, table)));
        List<String> names = new ArrayList<>(
                Stream.concat(files.stream(), texts.stream()).map(Entry::name).toList());
        names.addAll(List.of(HTML, MARKDOWN, DOCUMENT));
        texts.add(text(DOCUMENT, () -> ResultJson.of(result, names)));
        Map<String, byte[]> drawn = new ConcurrentHashMap<>();
        try (FolderWriter writer = FolderWriter.open(folder)) {
            Stream.concat(files.stream(), texts.stream()).parallel().forEach(e -> {
                byte[] content = e.content().get();
                add(writer, e.name(), content);
                if (e.name().endsWith(PNG)) {
                    drawn.put(e.name(), content);
                }
            });
            pages(result, pictures, drawn, Set.copyOf(names)).forEach((name, text) -> add(writer, name, utf8(text)));
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

    /** The page in both forms; a picture that was not drawn as PNG for a file is drawn for the page. */
    private static Map<String, String> pages(
            StudyResult result, List<Picture> pictures, Map<String, byte[]> drawn, Set<String> names) {
        Page page = ResultPage.of(result, pictures);
        Map<String, Picture> byName = pictures.stream().collect(Collectors.toMap(Picture::name, p -> p));
        return Map.of(
                HTML,
                HtmlPage.of(
                        page,
                        name -> drawn.computeIfAbsent(
                                name + PNG, n -> PictureWriter.bytes(byName.get(name), PictureWriter.Format.PNG))),
                MARKDOWN,
                MarkdownPage.of(page, name -> names.contains(name + PNG) ? name + PNG : name + SVG));
    }

    private static Entry text(String name, Supplier<String> text) {
        return new Entry(name, () -> utf8(text.get()));
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static void add(FolderWriter writer, String name, byte[] content) {
        try {
            writer.add(name, content);
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
        return name.matches("[A-Za-z0-9][A-Za-z0-9.-]*\\.(png|svg|dxf|csv|html|md|json)");
    }
}
