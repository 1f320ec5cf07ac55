package eddyreach.kinds.speed;

import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import eddyreach.switching.PulseTrain;
import eddyreach.switching.SpeedLimit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/** Shows how fast a row may pass. */
record SpeedPresentation(SpeedResult result) implements Presentation {

    @Override
    public String answer() {
        return SpeedText.answer(result);
    }

    /** The pulses that are shown: those asked for, those at the limit, those well beyond, or those of a row that creeps. */
    private List<PulseTrain> trains() {
        List<PulseTrain> trains = new ArrayList<>(result.asked().stream().toList());
        if (result.limit() instanceof SpeedLimit.Limited limited) {
            trains.add(limited.below());
            trains.addAll(result.beyond().stream().toList());
        } else if (result.limit() instanceof SpeedLimit.NeverClean never) {
            trains.add(never.train());
        }
        return trains;
    }

    @Override
    public List<Picture> pictures() {
        String subtitle = result.model().name() + ", " + result.input().tooth().label() + " every "
                + Labels.length(result.input().wheel().pitch()) + " at "
                + Labels.millimetres(result.input().distance()) + " mm";
        List<Picture> list = new ArrayList<>();
        if (!trains().isEmpty()) {
            list.add(new Picture(
                    "pulses",
                    "Pulses of the output",
                    subtitle,
                    result.name(),
                    (g, area) -> SpeedCharts.pulses(trains()).draw(g, area)));
        }
        list.add(new Picture(
                "row",
                "Amplitude along the row, at rest",
                subtitle,
                result.name(),
                (g, area) -> SpeedCharts.row(result).draw(g, area)));
        return list;
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("pulses.csv", this::pulses);
        tables.put("row.csv", this::row);
        return tables;
    }

    private Csv pulses() {
        Csv csv = new Csv("frequency_hz", "start_ms", "on_ms", "off_ms", "clean");
        for (PulseTrain t : trains()) {
            for (PulseTrain.Pulse p : t.pulses()) {
                csv.row(t.frequency(), p.start() * 1e3, p.onTime() * 1e3, p.offTime() * 1e3, t.clean() ? 1.0 : 0.0);
            }
        }
        return csv;
    }

    private Csv row() {
        Csv csv = new Csv("way_mm", "amplitude_v");
        double[] a = result.amplitude();
        for (int i = 0; i < a.length; i++) {
            csv.row(result.input().wheel().pitch() * i / (a.length - 1) * Labels.MM, a[i]);
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        SpeedInput in = result.input();
        JsonNode limit = new JsonNode();
        if (result.limit() instanceof SpeedLimit.Limited limited) {
            JsonNode shares = new JsonNode();
            limited.shares().forEach((s, v) -> shares.with(SpeedText.stage(s).replace(' ', '_') + "_s", v));
            limit.with("frequency_hz", limited.frequency())
                    .with("error_hz", result.error())
                    .with("speed_m_per_s", in.wheel().speed(limited.frequency()))
                    .with("revolutions_per_min", in.wheel().perMinute(limited.frequency()))
                    .with("limited_by", SpeedText.stage(limited.limiting()))
                    .with("costs", shares);
        } else {
            limit.with("clean_at_any_speed", result.limit() instanceof SpeedLimit.Unlimited);
        }
        List<Object> trains = new ArrayList<>();
        trains().forEach(t -> trains.add(new JsonNode()
                .with("frequency_hz", t.frequency())
                .with("shortest_on_s", t.shortestOn())
                .with("shortest_off_s", t.shortestOff())
                .with("duty", t.duty())
                .with(
                        "fault",
                        t.fault().map(f -> f.name().toLowerCase(Locale.ROOT)).orElse("none"))));
        document.with("tooth", parts.target(in.tooth()))
                .with("distance_m", in.distance())
                .with("pitch_m", in.wheel().pitch())
                .with("teeth", in.wheel().teeth())
                .with("demodulator_hz", in.corner())
                .with("output_delay_s", in.delay())
                .with("noise_v", in.noise())
                .with("shortest_pulse_s", in.shortest())
                .with("limit", limit)
                .with("trains", trains)
                .with(
                        "on_time_of_sudden_target_s",
                        result.sudden().map(SpeedResult.Sudden::on).orElse(Double.NaN))
                .with(
                        "off_time_of_sudden_target_s",
                        result.sudden().map(SpeedResult.Sudden::off).orElse(Double.NaN))
                .with("start_up_s", result.startUp())
                .with("amplitude_v", JsonParts.numbers(result.amplitude()));
    }

    @Override
    public List<Material> materials() {
        return result.input().tooth().body().materials().stream().distinct().toList();
    }

    @Override
    public boolean sideways() {
        return true;
    }

    @Override
    public void write(Page page) {
        SpeedInput in = result.input();
        page.paragraph("Row: " + in.tooth().label() + " every "
                + Labels.length(in.wheel().pitch()) + " at "
                + Labels.millimetres(in.distance()) + " mm; demodulator " + Labels.frequency(in.corner())
                + ", output delay " + SpeedText.time(in.delay()) + ", noise " + Labels.significant(in.noise() * 1e6, 3)
                + " µV, shortest clean pulse " + SpeedText.time(in.shortest()) + ".");
        page.heading("Pulses");
        page.table(
                List.of("pulses per second", "m/s", "rpm", "on", "off", "on, %", "what comes"),
                Set.of(0, 1, 2, 3, 4, 5),
                trains().stream().map(this::row).toList());
        if (result.limit() instanceof SpeedLimit.Limited limited) {
            page.heading("What takes the time");
            List<Page.Row> rows = new ArrayList<>();
            limited.shares().forEach((s, v) -> rows.add(Page.Row.of(SpeedText.stage(s), SpeedText.time(v))));
            page.table(List.of("stage", "of the period"), Set.of(1), rows);
            page.paragraph("At the limit the period is " + SpeedText.time(1 / limited.frequency())
                    + ". It would be shorter by what stands here without that stage, by nothing where another hides it;"
                    + " for the geometry it is the period that would be left if all else followed at once.");
        }
        page.paragraph(result.sudden()
                        .map(s -> "A tooth that comes or goes at once: on after " + SpeedText.time(s.on())
                                + ", off after " + SpeedText.time(s.off()) + ". ")
                        .orElse("A tooth before the face is not detected at this distance. ")
                + "After power-on the output is valid after " + SpeedText.time(result.startUp()) + ".");
        page.items(SpeedText.NOT_MODELLED);
    }

    private Page.Row row(PulseTrain t) {
        Wheel w = result.input().wheel();
        boolean any = !t.pulses().isEmpty();
        return new Page.Row(
                List.of(
                        Labels.significant(t.frequency(), 4),
                        Labels.significant(w.speed(t.frequency()), 3),
                        w.teeth() == 0 ? "-" : Labels.significant(w.perMinute(t.frequency()), 4),
                        any ? SpeedText.time(t.shortestOn()) : "-",
                        any ? SpeedText.time(t.shortestOff()) : "-",
                        any ? Labels.fixed(100 * t.duty(), 0) : "-",
                        t.fault().map(SpeedText::fault).orElse("clean")),
                !t.clean());
    }
}
