package eddyreach.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import eddyreach.engine.assure.Advice;
import eddyreach.engine.assure.Allowances;
import eddyreach.engine.assure.Assessment;
import eddyreach.engine.assure.Assurance;
import eddyreach.engine.assure.Change;
import eddyreach.engine.assure.Explanation;
import eddyreach.engine.assure.Regime;
import eddyreach.engine.assure.Sensitivity;
import eddyreach.engine.assure.TargetResult;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.kinds.approach.SampleResult;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter.Format;
import eddyreach.report.words.ReasonText;
import eddyreach.study.ResultFiles;
import eddyreach.study.ResultPage;
import eddyreach.study.Stamp;
import eddyreach.study.StudyHeader;
import eddyreach.units.Texts;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class PageTest {

    private static final String EVIL = "<script>alert(\"x\")</script> | a & b *bold* [l](u) \u0001";

    private static final Stamp STAMP = new Stamp(LocalDate.of(2026, 11, 27), "Eddyreach 1.2.3", "enquiry " + EVIL);

    @TempDir
    private Path folder;

    /** The sample with names that try to break out and with assessments of every sort. */
    private static ApproachResult evil() {
        ApproachResult r = SampleResult.of();
        StudyHeader h = r.header();
        List<TargetResult> targets = new ArrayList<>();
        for (TargetResult t : r.targets()) {
            double on = t.distance().on();
            Assurance sure = new Assurance(
                    Double.isNaN(on) ? Double.NaN : 0.7 * on,
                    Double.isNaN(on) ? Double.POSITIVE_INFINITY : 1.4 * on,
                    Allowances.STANDARD,
                    List.of(new Assurance.Contribution(Assurance.Cause.SPREAD, 0.9 * on, 1.1 * on)),
                    4.8e-3,
                    Double.POSITIVE_INFINITY);
            Assessment a = new Assessment(
                    sure,
                    Optional.of(new Explanation(
                            Optional.of(new Explanation.Front(EVIL, true, 1e-3, 0.2e-3, Regime.MIRROR)),
                            200e3,
                            Optional.empty(),
                            Optional.empty(),
                            List.of(new Sensitivity(Sensitivity.Quantity.SIZE, 0.9, Double.NaN)))),
                    Optional.of(new Advice(
                            true, List.of(new Change(Change.Kind.STEEL_FLAG, EVIL, 1e-3, 5e-3, 1e-3)), true)));
            targets.add(new TargetResult(
                    new eddyreach.model.values.Target(
                            t.target().id(),
                            t.target().label() + " " + EVIL,
                            t.target().body()),
                    t.curve(),
                    t.distance(),
                    t.factor(),
                    t.factorError(),
                    t.band(),
                    t.budget(),
                    t.reason(),
                    t.warnings(),
                    Optional.of(a)));
        }
        StudyHeader header =
                new StudyHeader(h.id(), EVIL, EVIL, ApproachKind.APPROACH, h.switchModel(), h.standard(), h.accuracy());
        return new ApproachResult(header, r.trimmed(), targets, r.fields(), r.currents(), r.warnings());
    }

    private static Document parse(String html) throws Exception {
        return DocumentBuilderFactory.newDefaultInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> list = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            list.add((Element) nodes.item(i));
        }
        return list;
    }

    @Test
    void htmlIsWellFormedAndNothingBreaksOut() throws Exception {
        ApproachResult result = evil();
        Page page = ResultPage.record(result, result.presentation().pictures(), STAMP);
        Document html = parse(HtmlPage.of(page, name -> new byte[] {1, 2, 3}));
        assertThat(elements(html, "script")).isEmpty();
        assertThat(elements(html, "h1").get(0).getTextContent()).isEqualTo(EVIL.replace('\u0001', ' '));
        assertThat(elements(html, "img")).hasSameSizeAs(result.presentation().pictures());
        for (Element row : elements(html, "tr")) {
            Element table = (Element) row.getParentNode();
            int columns = elements(html, "th").stream()
                    .filter(th -> th.getParentNode().getParentNode() == table)
                    .toList()
                    .size();
            assertThat(row.getElementsByTagName("td").getLength()
                            + row.getElementsByTagName("th").getLength())
                    .isEqualTo(columns);
        }
        assertThat(elements(html, "link")).isEmpty();
        assertThat(elements(html, "img")).allMatch(i -> i.getAttribute("src").startsWith("data:image/png;base64,"));
    }

    @Test
    void markdownTablesHaveTheirShapeAndNothingBreaksOut() {
        ApproachResult result = evil();
        Page page = ResultPage.record(result, result.presentation().pictures(), STAMP);
        String text = MarkdownPage.of(page, name -> name + ".png");
        assertThat(text).startsWith("# \\<script\\>").doesNotContain("<script>").doesNotContain("[l](u)");
        int columns = 0;
        int tables = 0;
        for (String line : text.lines().toList()) {
            if (!line.startsWith("|")) {
                columns = 0;
                continue;
            }
            int cells = line.replace("\\|", "").split("\\|", -1).length - 2;
            tables += columns == 0 ? 1 : 0;
            columns = columns == 0 ? cells : columns;
            assertThat(cells).as(line).isEqualTo(columns);
        }
        assertThat(tables).isGreaterThan(3);
        result.presentation().pictures().forEach(p -> assertThat(text).contains("](" + p.name() + ".png)"));
    }

    @Test
    void thePageAnswers() {
        ApproachResult result = evil();
        String text = MarkdownPage.of(ResultPage.record(result, List.of(), STAMP), UnaryOperator.identity());
        assertThat(text)
                .contains("**5 of 6 targets are detected: on at ")
                .contains("; not detected: copper washer 6 mm")
                .contains("Reference: enquiry ")
                .contains("2026-11-27, Eddyreach 1.2.3.")
                .contains("## Distances")
                .contains("### What to change")
                .contains("### Why")
                .contains("## Inputs")
                .contains("## Assumptions and limits")
                .contains("## Cautions")
                .contains("is not a safety device")
                .contains("any distance when hottest")
                .contains(SampleResult.STEEL.source())
                .contains("**beyond range**")
                .doesNotContain("NaN")
                .doesNotContain("Infinity")
                .doesNotContain("## Pictures");
    }

    @Test
    void aComparisonOfMaterialsListsItsReasons() {
        ApproachResult result = SampleResult.of();
        String text = MarkdownPage.of(ResultPage.record(result, List.of(), STAMP), UnaryOperator.identity());
        assertThat(text).contains("## Why\n").doesNotContain("### ");
        result.targets().stream()
                .skip(1)
                .forEach(t -> assertThat(text)
                        .contains("- " + Texts.capitalised(t.target().label()) + ", " + ReasonText.of(t.reason())));
    }

    /** The sheet holds what decides; all else is in the record. */
    @Test
    void theSheetIsShort() {
        ApproachResult result = SampleResult.of();
        String text = MarkdownPage.of(
                ResultPage.sheet(result, result.presentation().pictures(), STAMP), UnaryOperator.identity());
        assertThat(text.lines().filter(l -> l.startsWith("!["))).hasSize(2);
        assertThat(text)
                .contains("**5 of 6 targets are detected")
                .contains("## Distances", "## Why", "## Cautions", "## Inputs in brief")
                .contains("record.html")
                .doesNotContain("## Assumptions and limits");
    }

    @Test
    void aRowMustFitItsTable() {
        assertThatThrownBy(() -> new Page("t").table(List.of("a", "b"), Set.of(), List.of(Page.Row.of("x"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("1 cells below 2 headings");
    }

    @Test
    void picturesAreEmbeddedAndReferredTo() throws Exception {
        ApproachResult r = SampleResult.of();
        ApproachResult few =
                new ApproachResult(r.header(), r.trimmed(), r.targets(), List.of(), List.of(), r.warnings());
        List<Path> files = ResultFiles.write(few, folder, EnumSet.of(Format.PNG));
        assertThat(files).contains(folder.resolve("page.html"), folder.resolve("page.md"));
        Document html = parse(Files.readString(folder.resolve("record.html")));
        String source = elements(html, "img").get(0).getAttribute("src");
        byte[] png = Base64.getDecoder().decode(source.substring(source.indexOf(',') + 1));
        assertThat(png).isEqualTo(Files.readAllBytes(folder.resolve("factors.png")));
        assertThat(ImageIO.read(new ByteArrayInputStream(png)).getWidth()).isEqualTo(2 * Picture.WIDTH);
        String markdown = Files.readString(folder.resolve("record.md"));
        for (Picture p : few.presentation().pictures()) {
            assertThat(markdown).contains("](" + p.name() + ".png)");
            assertThat(folder.resolve(p.name() + ".png")).exists();
        }
    }

    @Test
    void withSvgAloneTheMarkdownRefersToIt() throws IOException {
        ApproachResult r = SampleResult.of();
        ApproachResult few =
                new ApproachResult(r.header(), r.trimmed(), r.targets(), List.of(), List.of(), r.warnings());
        ResultFiles.write(few, folder, EnumSet.of(Format.SVG));
        assertThat(Files.readString(folder.resolve("page.md"))).contains("](factors.svg)");
        assertThat(Files.readString(folder.resolve("page.html"))).contains("data:image/png;base64,");
    }

    @Test
    void decimalCommas() {
        Csv csv = new Csv("a;b", "c,d");
        csv.row("1.4301", -2.5e-7);
        csv.row("x", Double.NaN);
        assertThat(csv.text(Csv.Decimal.COMMA)).isEqualTo("\"a;b\";c,d\r\n1.4301;-2,5E-7\r\nx;\r\n");
        assertThat(csv.text()).isEqualTo("a;b,\"c,d\"\r\n1.4301,-2.5E-7\r\nx,\r\n");
    }

    @Test
    void noTextBecomesAFormulaInASpreadsheet() {
        Csv csv = new Csv("a", "b");
        csv.row("=1+1", "@x");
        csv.row("-a", "+b");
        csv.row("-1.5e-3", -2.0);
        assertThat(csv.text()).isEqualTo("a,b\r\n'=1+1,'@x\r\n'-a,'+b\r\n-1.5e-3,-2\r\n");
    }
}
