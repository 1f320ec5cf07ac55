package eddyreach.kinds.background;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.mount.MountJson;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
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
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Shows metal behind targets. */
public record BackgroundPresentation(BackgroundResult result) implements Presentation {

    @Override
    public String answer() {
        return BackgroundPage.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        String head = result.model().name() + " · "
                + Labels.frequency(result.undamped().frequency())
                + " · background " + result.background().material().name() + " "
                + Labels.length(result.background().thickness());
        return List.of(
                new Picture(
                        "distances",
                        "Switching distances over the distance of the background",
                        head,
                        result.name(),
                        (g, area) -> BackgroundCharts.distances(result).draw(g, area)),
                new Picture(
                        "amplitude",
                        "Amplitude with the background alone",
                        head,
                        result.name(),
                        (g, area) -> BackgroundCharts.amplitude(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("background.csv", this::table);
        return tables;
    }

    private Csv table() {
        Csv csv = new Csv(
                "target",
                "background_mm",
                "outcome",
                "on_mm",
                "off_mm",
                "on_error_mm",
                "amplitude_without_target_v",
                "reserve_used");
        for (BackgroundResult.Series s : result.targets()) {
            for (int i = 0; i < result.distance().length; i++) {
                SwitchDistance d = s.behind().get(i);
                csv.row(
                        s.target().id(),
                        result.distance()[i] * Labels.MM,
                        Terms.of(d.outcome()),
                        d.on() * Labels.MM,
                        d.off() * Labels.MM,
                        d.onError() * Labels.MM,
                        result.amplitude()[i],
                        result.reserve()[i]);
            }
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("background", MountJson.background(result.background(), parts));
        document.with(
                "mount",
                MountJson.mount(
                        result.mount(), result.mount().parts(result.model().coreRadius()), parts));
        document.with("usual_free_zone_m", result.usualFront());
        document.with(
                "background_alone",
                new JsonNode()
                        .with("on_m", result.alone().on())
                        .with("off_m", result.alone().off())
                        .with("distance_m", JsonParts.numbers(result.distance()))
                        .with("amplitude_v", JsonParts.numbers(result.amplitude()))
                        .with("reserve_used", JsonParts.numbers(result.reserve())));
        List<Object> targets = new ArrayList<>();
        for (BackgroundResult.Series s : result.targets()) {
            targets.add(new JsonNode()
                    .with("target", parts.target(s.target()))
                    .with("on_without_background_m", s.free().on())
                    .with("off_without_background_m", s.free().off())
                    .with("within_a_tenth_from_m", s.tenth())
                    .with("within_a_hundredth_from_m", s.hundredth())
                    .with("room_behind_at_a_tenth_m", s.tenthRoom())
                    .with("room_behind_at_a_hundredth_m", s.hundredthRoom())
                    .with("tolerance_m", s.tolerance())
                    .with("on_m", numbers(s, SwitchDistance::on))
                    .with("off_m", numbers(s, SwitchDistance::off))
                    .with("on_error_m", numbers(s, SwitchDistance::onError)));
        }
        document.with("targets", targets);
    }

    private static List<Double> numbers(BackgroundResult.Series s, ToDoubleFunction<SwitchDistance> value) {
        return s.behind().stream().map(value::applyAsDouble).toList();
    }

    @Override
    public List<Material> materials() {
        return Stream.concat(
                        Stream.of(result.background().material()),
                        result.targets().stream().flatMap(s -> s.target().body().materials().stream()))
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        BackgroundPage.write(result, page);
    }
}
