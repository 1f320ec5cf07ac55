package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.values.Target;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** What tables, texts and JSON of sweeps have in common. */
final class SweepParts {

    /** Columns of a table after those that name the target. */
    static final List<String> DISTANCE_COLUMNS =
            List.of("outcome", "on_mm", "on_error_mm", "off_mm", "off_error_mm", "factor");

    private SweepParts() {}

    /** A table with a row per point: id, varied value in the unit of its column, where it switches. */
    static Csv table(String first, String second, double unit, List<SweepCurve> curves, double effective) {
        List<String> header = new ArrayList<>(List.of(first, second));
        header.addAll(DISTANCE_COLUMNS);
        Csv csv = new Csv(header.toArray(String[]::new));
        for (SweepCurve curve : curves) {
            for (SweepPoint p : curve.points()) {
                csv.row(row(p.distance(), effective, curve.id(), p.value() * unit));
            }
        }
        return csv;
    }

    /** Cells of a row: what is given, then the columns of the distance. */
    static Object[] row(SwitchDistance d, double effective, Object... first) {
        Object[] cells = Arrays.copyOf(first, first.length + DISTANCE_COLUMNS.size());
        int n = first.length;
        cells[n++] = Terms.of(d.outcome());
        cells[n++] = d.on() * Labels.MM;
        cells[n++] = d.onError() * Labels.MM;
        cells[n++] = d.off() * Labels.MM;
        cells[n++] = d.offError() * Labels.MM;
        cells[n] = d.on() / effective;
        return cells;
    }

    static JsonNode distance(SwitchDistance d) {
        return new JsonNode()
                .with("outcome", Terms.of(d.outcome()))
                .with("on_m", d.on())
                .with("on_error_m", d.onError())
                .with("off_m", d.off())
                .with("off_error_m", d.offError());
    }

    static Map<String, Object> point(SweepPoint p, String key) {
        JsonNode node = new JsonNode().with(key, p.value());
        node.putAll(distance(p.distance()));
        return node;
    }

    static List<Map<String, Object>> points(List<SweepPoint> points, String key) {
        return points.stream().map(p -> point(p, key)).toList();
    }

    static String on(SwitchDistance d) {
        return Double.isFinite(d.on()) ? Labels.uncertainCell(d.on(), d.onError()) : Terms.of(d.outcome());
    }

    static String off(SwitchDistance d) {
        return Labels.uncertainCell(d.off(), d.offError());
    }

    static String factor(double factor) {
        return Double.isFinite(factor) ? Labels.fixed(factor, 2) : "-";
    }

    /** A table in columns. */
    static void write(TextPage page, int[] columns, List<String> heads, List<Page.Row> rows) {
        page.line(page.mark(TextPage.row(columns, heads.toArray(String[]::new)), TextPage.BOLD));
        rows.forEach(r -> page.line(TextPage.row(columns, r.cells().toArray(String[]::new))));
    }

    /** The outline in a few words. */
    static String outline(Target.Outline outline) {
        if (outline instanceof Target.Outline.Disc d) {
            return "disc " + Labels.length(d.diameter());
        }
        if (outline instanceof Target.Outline.Square s) {
            return "square " + Labels.length(s.side());
        }
        return "endless plate";
    }

    /** A name in a column, cut where it is too long for it. */
    static String cut(String name, int width) {
        return name.length() <= width ? name : name.substring(0, width - 1) + "…";
    }
}
