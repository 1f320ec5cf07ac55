package eddyreach.kinds.mount;

import eddyreach.engine.core.Curve;
import eddyreach.engine.core.FieldPair;
import eddyreach.engine.core.FieldPicture;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.FieldDrawing;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.ShadeScale;
import eddyreach.report.draw.Theme;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Terms;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Shows a switch in mounts. */
public record MountPresentation(MountResult result) implements Presentation {

    @Override
    public String answer() {
        return MountWords.answer(result.cases());
    }

    @Override
    public List<Picture> pictures() {
        String head = result.model().name() + " · "
                + Labels.frequency(result.undamped().frequency());
        List<Picture> pictures = new ArrayList<>();
        List<MountTarget> first = result.cases().get(0).targets();
        for (int i = 0; i < first.size(); i++) {
            int target = i;
            pictures.add(new Picture(
                    i == 0 ? "amplitude" : "amplitude-" + first.get(i).target().id(),
                    "Oscillator amplitude over distance, in free air and in mounts",
                    head + " · target " + first.get(i).target().label(),
                    result.name(),
                    (g, area) -> amplitude(target).draw(g, area)));
        }
        for (MountCase c : result.cases()) {
            if (!c.mount().isEmpty()) {
                pictures.addAll(single(result.model(), c, head, result.name()));
            }
        }
        ShadeScale shades = ShadeScale.decades(result.fields().stream()
                .flatMap(p -> Stream.of(p.left(), p.right()))
                .map(FieldPicture::strength)
                .toList());
        double flux = result.fields().isEmpty()
                ? 0
                : FieldDrawing.fluxStep(result.fields().get(0).left());
        String step = Labels.significant(flux * Labels.NANOWEBER, 3);
        for (FieldPair field : result.fields()) {
            pictures.add(new Picture(
                    "field-" + field.id(),
                    "Flux lines, " + Terms.left(field.comparison()) + " and " + Terms.right(field.comparison()) + ": "
                            + field.title(),
                    head + " · no target · " + step + " nWb per A between flux lines, shade: field strength",
                    result.name(),
                    new FieldDrawing(field, shades, flux)));
        }
        return pictures;
    }

    /** Amplitude over distance of one target, in free air and in each mount, with the thresholds. */
    private JFreeChart amplitude(int target) {
        XYSeriesCollection data = new XYSeriesCollection();
        for (MountCase c : result.cases()) {
            MountTarget t = c.targets().get(target);
            XYSeries series = new XYSeries(data.getSeriesCount(), false);
            series.setDescription(c.mount().id() + ": " + where(t));
            Curve curve = t.curve();
            for (int i = 0; i < curve.size(); i++) {
                series.add(curve.distance(i) * Labels.MM, curve.amplitude(i), false);
            }
            data.addSeries(series);
        }
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(Labels.DISTANCE), Theme.axis(Labels.AMPLITUDE));
        DistanceCharts.thresholds(plot, result.trimmed());
        return Theme.chart(plot, true);
    }

    private static String where(MountTarget t) {
        return t.distance().outcome() == SwitchDistance.Outcome.SWITCHES
                ? "on at " + Labels.millimetres(t.distance().on()) + " mm"
                : Terms.of(t.distance().outcome());
    }

    /** Section and effect of each dimension of one mount. */
    public static List<Picture> single(SwitchModel model, MountCase c, String head, String source) {
        List<Picture> pictures = new ArrayList<>();
        pictures.add(new Picture(
                "section-" + c.mount().id(),
                "Section: " + c.mount().name(),
                head + " · " + c.judgement().grade().label(),
                source,
                new MountDrawing(model, c)));
        if (!c.effects().isEmpty()) {
            pictures.add(new Picture(
                    "dimensions-" + c.mount().id(),
                    "What each dimension does to the switch-on distance",
                    head + " · " + c.mount().name() + " · target "
                            + c.targets().get(0).target().label(),
                    source,
                    new EffectChart(c.effects())));
        }
        return pictures;
    }

    @Override
    public Map<String, Supplier<String>> drawings() {
        Map<String, Supplier<String>> drawings = new LinkedHashMap<>();
        result.cases().stream()
                .filter(c -> !c.mount().isEmpty())
                .forEach(c -> drawings.put(
                        "section-" + Picture.fileName(c.mount().id()) + ".dxf",
                        () -> DxfDrawing.of(result.model(), c)));
        return drawings;
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("mounts.csv", this::mounts);
        tables.put("corners.csv", this::corners);
        tables.put("amplitude.csv", this::amplitudes);
        return tables;
    }

    private Csv mounts() {
        Csv csv = new Csv(
                "mount",
                "target",
                "undamped_v",
                "damping_of_threshold",
                "reserve_used",
                "worst_reserve_used",
                "output",
                "on_mm",
                "off_mm",
                "on_error_mm",
                "shift_of_sr",
                "travel_mm",
                "assured_on_mm",
                "assured_off_mm");
        for (MountCase c : result.cases()) {
            for (MountTarget t : c.targets()) {
                csv.row(
                        c.mount().id(),
                        t.target().id(),
                        c.undamped().amplitude(),
                        c.reserve().total(),
                        c.reserve().used(),
                        c.worst().used(),
                        c.verdict().label(),
                        t.distance().on() * Labels.MM,
                        t.distance().off() * Labels.MM,
                        t.distance().onError() * Labels.MM,
                        t.shift(),
                        t.travel() * Labels.MM,
                        t.assurance().map(a -> a.assuredOn() * Labels.MM).orElse(Double.NaN),
                        t.assurance().map(a -> a.assuredOff() * Labels.MM).orElse(Double.NaN));
            }
        }
        return csv;
    }

    private Csv corners() {
        Csv csv = new Csv(
                "mount",
                "temperature_c",
                "trim_in_sn",
                "reserve_used",
                "output",
                "reserve_used_with_own_drift",
                "output_with_own_drift");
        for (MountCase c : result.cases()) {
            for (MountCase.Corner k : c.corners()) {
                csv.row(
                        c.mount().id(),
                        k.celsius(),
                        k.trim(),
                        k.used(),
                        k.verdict().label(),
                        k.bare(),
                        k.bareVerdict().label());
            }
        }
        return csv;
    }

    private Csv amplitudes() {
        Csv csv = new Csv("mount", "target", "distance_mm", "amplitude_v", "conductance_s", "frequency_hz");
        for (MountCase c : result.cases()) {
            for (MountTarget t : c.targets()) {
                Curve curve = t.curve();
                for (int i = 0; i < curve.size(); i++) {
                    csv.row(
                            c.mount().id(),
                            t.target().id(),
                            curve.distance(i) * Labels.MM,
                            curve.amplitude(i),
                            curve.conductance(i),
                            curve.frequency(i));
                }
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with(
                "mounts",
                result.cases().stream().map(c -> MountJson.found(c, parts)).toList());
        document.with(
                "usual_rules", result.rules().stream().map(MountJson::rule).toList());
    }

    @Override
    public List<Material> materials() {
        return result.cases().stream()
                .flatMap(c -> Stream.concat(
                        c.parts().stream().map(Part::material),
                        c.targets().stream().flatMap(t -> t.target().body().materials().stream())))
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        MountPage.write(result, page);
    }
}
