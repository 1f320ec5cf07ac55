package eddyreach.study;

import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.page.Csv;
import eddyreach.report.page.FolderWriter;
import eddyreach.report.page.HtmlPage;
import eddyreach.report.page.MarkdownPage;
import eddyreach.report.page.Page;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes everything about a result into one folder: pictures, tables, a page to send on and a JSON document. */
public final class ResultFiles {

    private static final String KIND = "result";
    private static final String DOCUMENT = "result.json";
    private static final String HTML = "page.html";
    private static final String MARKDOWN = "page.md";
    private static final String RECORD_HTML = "record.html";
    private static final String RECORD_MARKDOWN = "record.md";
    private static final List<String> PAGES = List.of(HTML, MARKDOWN, RECORD_HTML, RECORD_MARKDOWN);
    private static final String PNG = PictureWriter.Format.PNG.ending();
    private static final String SVG = PictureWriter.Format.SVG.ending();

    private ResultFiles() {}

    /** A file to be made. */
    private record Entry(String name, Supplier<byte[]> content) {}

    /**
     * Looks whether a result can be put into a folder, before it is computed.
     *
     * @throws IOException when a file is in the way that no run has written
     */
    public static void check(Path folder) throws IOException {
        FolderWriter.check(
                folder, KIND, Stream.concat(PAGES.stream(), Stream.of(DOCUMENT)).toList());
    }

    /**
     * Writes the result; what an earlier run wrote and this one does not, is removed. Pictures are drawn on all cores.
     *
     * @param folder made if it does not exist; other files in it are left alone
     * @param formats formats of the pictures; none for tables only
     * @return the files, pictures first and the JSON document last
     * @throws IOException when a file cannot be written or a foreign one has its name; the earlier result is then still there
     */
    public static List<Path> write(StudyResult result, Path folder, Set<PictureWriter.Format> formats)
            throws IOException {
        return write(result, folder, formats, Stamp.today(""), Csv.Decimal.POINT);
    }

    /**
     * The same.
     *
     * @param stamp stands at the head of the pages
     * @param decimal how the tables write numbers
     * @throws IOException when a file cannot be written or a foreign one has its name; the earlier result is then still there
     */
    public static List<Path> write(
            StudyResult result, Path folder, Set<PictureWriter.Format> formats, Stamp stamp, Csv.Decimal decimal)
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
        return write(result, folder, pictures, entries, stamp, decimal);
    }

    private static List<Path> write(
            StudyResult result,
            Path folder,
            List<Picture> pictures,
            List<Entry> files,
            Stamp stamp,
            Csv.Decimal decimal)
            throws IOException {
        List<Entry> texts = new ArrayList<>();
        result.presentation()
                .tables()
                .forEach((name, table) -> texts.add(text(name, () -> table.get().text(decimal))));
        List<String> names = new ArrayList<>(
                Stream.concat(files.stream(), texts.stream()).map(Entry::name).toList());
        names.addAll(PAGES);
        names.add(DOCUMENT);
        texts.add(text(DOCUMENT, () -> ResultJson.of(result, names)));
        Map<String, byte[]> drawn = new ConcurrentHashMap<>();
        try (FolderWriter writer = FolderWriter.open(folder, KIND)) {
            Stream.concat(files.stream(), texts.stream()).parallel().forEach(e -> {
                byte[] content = e.content().get();
                add(writer, e.name(), content);
                if (e.name().endsWith(PNG)) {
                    drawn.put(e.name(), content);
                }
            });
            pages(result, pictures, drawn, Set.copyOf(names), stamp)
                    .forEach((name, text) -> add(writer, name, utf8(text)));
            writer.commit(names);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        return names.stream().map(folder::resolve).toList();
    }

    /** The pages in both forms; a picture that was not drawn as PNG for a file is drawn for the page. */
    private static Map<String, String> pages(
            StudyResult result, List<Picture> pictures, Map<String, byte[]> drawn, Set<String> names, Stamp stamp) {
        Map<String, Picture> byName = pictures.stream().collect(Collectors.toMap(Picture::name, p -> p));
        Function<String, byte[]> png = name ->
                drawn.computeIfAbsent(name + PNG, n -> PictureWriter.bytes(byName.get(name), PictureWriter.Format.PNG));
        UnaryOperator<String> file = name -> names.contains(name + PNG) ? name + PNG : name + SVG;
        Page sheet = ResultPage.sheet(result, pictures, stamp);
        Page record = ResultPage.record(result, pictures, stamp);
        return Map.of(
                HTML, HtmlPage.of(sheet, png),
                MARKDOWN, MarkdownPage.of(sheet, file),
                RECORD_HTML, HtmlPage.of(record, png),
                RECORD_MARKDOWN, MarkdownPage.of(record, file));
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
}
