package eddyreach.kinds.approach;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.CurrentPicture;
import eddyreach.engine.core.FieldPicture;
import eddyreach.model.values.Target;
import eddyreach.report.draw.CurrentDrawing;
import eddyreach.report.draw.FieldDrawing;
import eddyreach.report.draw.OffAxisDrawing;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.ShadeScale;
import eddyreach.report.draw.Theme;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jfree.chart.JFreeChart;

/** All pictures of a result, in the order in which a reader wants them. */
public final class ApproachPictures {

    private ApproachPictures() {}

    /** The pictures of a result; nothing is drawn yet. */
    public static List<Picture> of(ApproachResult result) {
        String head = heading(result);
        List<Picture> pictures = new ArrayList<>();
        if (!result.targets().isEmpty()) {
            String trim = "trimmed to sr "
                    + Labels.millimetres(result.model().effectiveDistance()) + " mm with "
                    + result.targets().get(0).target().label();
            pictures.add(chart(result, "factors", "Correction factors", head + " · " + trim, BarCharts::factors));
            List<ApproachResult> sheets = sheets(result);
            for (int i = 0; i < sheets.size(); i++) {
                curves(pictures, sheets.get(i), i == 0 ? "" : "-" + (i + 1), head, trim);
            }
        }
        result.mounted()
                .ifPresent(m -> pictures.add(chart(
                        inMount(result, m),
                        "amplitude-in-mount",
                        "Oscillator amplitude over distance, in the mount",
                        head + " · " + m.mount().name() + " · thresholds as set in free air",
                        CurveCharts::amplitude)));
        pictures.add(chart(
                result, "losses", "Where the loss goes", head + " · at the switch-on distance", BarCharts::losses));
        for (TargetResult found : result.targets()) {
            Target target = found.target();
            if (target.offset() > 0 && Double.isFinite(target.radius())) {
                pictures.add(arrangement(result, head, found));
            }
        }
        ShadeScale shades = ShadeScale.decades(
                result.fields().stream().map(FieldPicture::strength).toList());
        double flux = result.fields().isEmpty()
                ? 0
                : FieldDrawing.fluxStep(result.fields().get(0));
        String step = Labels.significant(flux * Labels.NANOWEBER, 3);
        for (FieldPicture field : result.fields()) {
            pictures.add(new Picture(
                    "field-" + Picture.fileName(field.id()),
                    "Magnetic field: " + Terms.of(field),
                    head + " · " + step + " nWb per A between flux lines, shade: field strength",
                    result.name(),
                    new FieldDrawing(field, shades, flux)));
        }
        for (CurrentPicture current : result.currents()) {
            String skin = current.skins().stream()
                    .map(s -> Labels.length(s.depth()) + (current.skins().size() > 1 ? " in " + s.material() : ""))
                    .distinct()
                    .collect(Collectors.joining(", "));
            pictures.add(new Picture(
                    "current-" + Picture.fileName(current.id()),
                    "Eddy currents: " + current.title(),
                    result.model().name() + " · " + Labels.frequency(current.frequency()) + " with this target"
                            + (skin.isEmpty() ? "" : " · skin depth " + skin),
                    result.name(),
                    new CurrentDrawing(current, target(result, current.id()))));
        }
        return pictures;
    }

    /** The names of the two that tell most. */
    static List<String> brief(ApproachResult result) {
        if (result.kind() == ApproachKind.MATERIALS) {
            return List.of("factors", "amplitude");
        }
        TargetResult last = result.targets().get(result.targets().size() - 1);
        return List.of(
                result.mounted().isPresent() ? "amplitude-in-mount" : "amplitude",
                (last.target().offset() > 0 ? "arrangement-" : "field-")
                        + Picture.fileName(last.target().id()));
    }

    /** The charts whose lines are told apart by colour and marker. */
    private static void curves(List<Picture> pictures, ApproachResult sheet, String number, String head, String trim) {
        pictures.add(chart(
                sheet,
                "amplitude" + number,
                "Oscillator amplitude over distance",
                head + " · " + trim,
                CurveCharts::amplitude));
        pictures.add(
                chart(sheet, "impedance" + number, "What the targets do to the coil", head, CurveCharts::impedance));
        pictures.add(chart(
                sheet,
                "plane" + number,
                "Impedance plane",
                head + " · circle at sr, dot at sr/2, square at the face",
                PlaneChart::of));
    }

    /** The targets on as many sheets as it takes that no colour comes twice on one; the standard target stands on each. */
    private static List<ApproachResult> sheets(ApproachResult result) {
        List<TargetResult> others = result.targets().subList(1, result.targets().size());
        int most = Theme.SERIES_COUNT - 1;
        int count = Math.max(1, (others.size() + most - 1) / most);
        List<ApproachResult> sheets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<TargetResult> shown = new ArrayList<>(result.targets().subList(0, 1));
            shown.addAll(others.subList(i * others.size() / count, (i + 1) * others.size() / count));
            sheets.add(new ApproachResult(
                    result.header(), result.trimmed(), shown, result.fields(), result.currents(), result.warnings()));
        }
        return sheets;
    }

    /** The first targets with what they do in a mount in place of free air. */
    private static ApproachResult inMount(ApproachResult result, InMount in) {
        List<TargetResult> shown = result.targets().stream()
                .limit(Theme.SERIES_COUNT)
                .map(t -> {
                    InMount.Found f = in.of(t.target());
                    return new TargetResult(
                            t.target(),
                            f.curve(),
                            f.distance(),
                            t.factor(),
                            t.factorError(),
                            t.band(),
                            t.budget(),
                            t.reason(),
                            t.warnings());
                })
                .toList();
        return new ApproachResult(
                result.header(), result.trimmed(), shown, result.fields(), result.currents(), result.warnings());
    }

    /** A target beside the axis, whose field has no symmetry and is not drawn. */
    private static Picture arrangement(ApproachResult result, String head, TargetResult found) {
        boolean seen = Double.isFinite(found.distance().on());
        double distance = seen ? found.distance().on() : result.model().effectiveDistance();
        return new Picture(
                "arrangement-" + Picture.fileName(found.target().id()),
                "Beside the axis: " + found.target().label(),
                head + " · to scale, " + (seen ? "at the switch-on distance" : "at sr, where it is not detected"),
                result.name(),
                new OffAxisDrawing(result.model(), found.target(), distance));
    }

    private static Picture chart(
            ApproachResult result,
            String name,
            String title,
            String subtitle,
            Function<ApproachResult, JFreeChart> chart) {
        return new Picture(
                name,
                title,
                subtitle,
                result.name(),
                (g, area) -> chart.apply(result).draw(g, area));
    }

    private static String heading(ApproachResult result) {
        return result.model().name() + " · "
                + Labels.frequency(result.undamped().frequency());
    }

    private static Optional<Target> target(ApproachResult result, String id) {
        return result.targets().stream()
                .map(TargetResult::target)
                .filter(t -> t.id().equals(id))
                .findFirst();
    }
}
