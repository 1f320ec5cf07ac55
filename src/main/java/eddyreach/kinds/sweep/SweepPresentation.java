package eddyreach.kinds.sweep;

import eddyreach.materials.Material;
import eddyreach.report.page.Csv;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;

/** What the presentations of sweeps have in common: a table with rows for each material, and the reason of what it shows. */
interface SweepPresentation extends Presentation {

    StudyResult result();

    /** Widths of the table's columns on the terminal; negative ones are of text, the first of them of names. */
    int[] columns();

    List<String> heads();

    /**
     * The rows of the table.
     *
     * @param name what a material is called
     */
    List<Page.Row> rows(Function<Material, String> name);

    /** Paragraphs before the table. */
    default List<String> introduction() {
        return List.of();
    }

    /** Paragraphs after it. */
    default List<String> notes() {
        return List.of();
    }

    /** Why the distances are as they are, a paragraph each. */
    List<String> reasons();

    @Override
    default void write(TextPage page) {
        introduction().forEach(page::paragraph);
        if (!introduction().isEmpty()) {
            page.gap();
        }
        int[] columns = columns();
        SweepParts.write(page, columns, heads(), rows(m -> SweepParts.cut(m.id(), -columns[0])));
        page.gap();
        notes().forEach(page::paragraph);
        reasons().forEach(page::paragraph);
    }

    @Override
    default void write(Page page) {
        introduction().forEach(page::paragraph);
        int[] columns = columns();
        Set<Integer> numbers = IntStream.range(0, columns.length)
                .filter(c -> columns[c] > 0)
                .boxed()
                .collect(Collectors.toSet());
        page.table(heads(), numbers, rows(Material::name));
        notes().forEach(page::paragraph);
        page.heading("Why");
        if (reasons().size() == 1) {
            page.paragraph(reasons().get(0));
        } else {
            page.items(reasons());
        }
    }

    /** A sweep that gives a curve for each material. */
    interface OfCurves extends SweepPresentation {

        List<SweepCurve> curves();

        /** How far the chart reaches, m. */
        double reach();

        /** How the table of all points is named. */
        PointTable table();

        default List<String> names() {
            return curves().stream().map(SweepCharts::name).toList();
        }

        /** Adds what all charts of distances show, and draws it. */
        default JFreeChart drawn(SweepCharts chart, boolean labelRight) {
            double sr = result().model().effectiveDistance();
            chart.level(sr * Labels.MM, "sr " + Labels.millimetres(sr) + " mm", labelRight);
            chart.upTo(reach() * Labels.MM);
            chart.markBeyond(curves());
            return chart.chart();
        }

        @Override
        default Map<String, Supplier<Csv>> tables() {
            PointTable table = table();
            return Map.of(
                    table.file(),
                    () -> SweepParts.table(
                            table.curve(),
                            table.value(),
                            table.perMetre(),
                            curves(),
                            result().model().effectiveDistance()));
        }
    }

    /**
     * A table of all points of all curves.
     *
     * @param file its file
     * @param curve the column that names the curve
     * @param value the column of the varied value, with its unit
     * @param perMetre such units in a metre
     */
    record PointTable(String file, String curve, String value, double perMetre) {}
}
