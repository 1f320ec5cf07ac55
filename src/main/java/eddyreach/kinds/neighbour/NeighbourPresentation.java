package eddyreach.kinds.neighbour;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** Shows two switches near each other. */
public record NeighbourPresentation(NeighbourResult result) implements Presentation {

    private static final double NANOHENRY = 1e9;

    @Override
    public String answer() {
        return NeighbourPage.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        String head =
                result.model().name() + " · neighbour " + result.input().other().id() + ", "
                        + result.input().arrangement().label();
        return List.of(
                new Picture(
                        "shift",
                        "Shift of the switch-on distance by a neighbour",
                        head,
                        result.name(),
                        (g, area) -> NeighbourCharts.shift(result).draw(g, area)),
                new Picture(
                        "beats",
                        "Depth of the beats between the two oscillators",
                        head,
                        result.name(),
                        (g, area) -> NeighbourCharts.beats(result).draw(g, area)));
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("neighbour.csv", this::shifts);
        tables.put("beats.csv", this::beats);
        return tables;
    }

    private Csv shifts() {
        Csv csv = new Csv(
                "target", "spacing_mm", "shift_coil_open", "shift_coil_open_error", "shift_with_tank", "shift_error");
        for (NeighbourResult.Series s : result.targets()) {
            for (int i = 0; i < result.spacing().length; i++) {
                csv.row(
                        s.target().id(),
                        result.spacing()[i] * Labels.MM,
                        s.metal()[i],
                        s.metalError()[i],
                        s.tank()[i],
                        s.error()[i]);
            }
        }
        return csv;
    }

    private Csv beats() {
        Csv csv = new Csv(
                "spacing_mm",
                "mutual_inductance_nh",
                "mutual_inductance_error_nh",
                "coupling_factor",
                "injected_over_own_amplitude",
                "locking_half_range_hz",
                "beat_hz",
                "depth",
                "depth_alternative",
                "difference_needed_hz");
        for (int i = 0; i < result.spacing().length; i++) {
            NeighbourResult.Coupling c = result.couplings().get(i);
            csv.row(
                    result.spacing()[i] * Labels.MM,
                    c.mutual() * NANOHENRY,
                    c.error() * NANOHENRY,
                    c.factor(),
                    c.injected(),
                    c.locking(),
                    c.beat(),
                    c.depth(),
                    c.depthApart(),
                    c.difference());
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("other", result.input().other().id())
                .with("arrangement", result.input().arrangement().label())
                .with("frequency_tolerance", result.input().tolerance())
                .with("alternative_frequency", result.input().alternative())
                .with("demodulator_hz", result.input().demodulator())
                .with("spacing_m", JsonParts.numbers(result.spacing()))
                .with("usual_spacing_m", result.usual())
                .with("holds_output_on_alone_up_to_m", result.latched())
                .with("holds_output_on_at_rest_up_to_m", result.latchedAtRest())
                .with(
                        "beats",
                        new JsonNode()
                                .with("quality_at_on_threshold", result.beats().quality())
                                .with("relaxation_hz", result.beats().relaxation())
                                .with("allowed_depth", result.beats().allowed())
                                .with("harmless_from", limit(result.alike()))
                                .with("harmless_from_with_alternative", limit(result.apart()))
                                .with("mutual_inductance_h", couplings(NeighbourResult.Coupling::mutual))
                                .with("mutual_inductance_error_h", couplings(NeighbourResult.Coupling::error))
                                .with("coupling_factor", couplings(NeighbourResult.Coupling::factor))
                                .with("injected_over_own_amplitude", couplings(NeighbourResult.Coupling::injected))
                                .with("locking_half_range_hz", couplings(NeighbourResult.Coupling::locking))
                                .with("beat_hz", couplings(NeighbourResult.Coupling::beat))
                                .with("depth", couplings(NeighbourResult.Coupling::depth))
                                .with("depth_with_alternative", couplings(NeighbourResult.Coupling::depthApart))
                                .with("difference_needed_hz", couplings(NeighbourResult.Coupling::difference)));
        List<Object> targets = new ArrayList<>();
        for (NeighbourResult.Series s : result.targets()) {
            targets.add(new JsonNode()
                    .with("target", parts.target(s.target()))
                    .with("on_alone_m", s.on())
                    .with("coil_open_within_a_twentieth_from", limit(s.metalTwentieth()))
                    .with("coil_open_within_a_tenth_from", limit(s.metalTenth()))
                    .with("within_a_twentieth_from", limit(s.twentieth()))
                    .with("within_a_tenth_from", limit(s.tenth()))
                    .with("shift_coil_open", JsonParts.numbers(s.metal()))
                    .with("shift_coil_open_error", JsonParts.numbers(s.metalError()))
                    .with("shift_with_tank", JsonParts.numbers(s.tank()))
                    .with("shift_error", JsonParts.numbers(s.error())));
        }
        document.with("targets", targets);
    }

    private static JsonNode limit(NeighbourResult.Limit limit) {
        return new JsonNode()
                .with("place", limit.place().name().toLowerCase(Locale.ROOT))
                .with("spacing_m", limit.spacing())
                .with("error_m", limit.error());
    }

    private List<Double> couplings(ToDoubleFunction<NeighbourResult.Coupling> value) {
        return result.couplings().stream().map(value::applyAsDouble).toList();
    }

    @Override
    public List<Material> materials() {
        return result.targets().stream()
                .flatMap(s -> s.target().body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        NeighbourPage.write(result, page);
    }
}
