package eddyreach.kinds.disturbance;

import eddyreach.oscillator.AlternatingField;
import eddyreach.oscillator.CoreSaturation;
import eddyreach.report.draw.DistanceCharts;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.Theme;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.study.Presentation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Shows what an external field does. */
record DisturbancePresentation(DisturbanceResult result) implements Presentation {

    private static final double MILLITESLA = 1e3;

    private static final List<String> NOT_MODELLED = List.of(
            "Worst case: the field lies along the axis and its voltage adds to the oscillation's, or takes away from it, in full. Demodulators and filters that"
                    + " reject it are not counted; with them a switch bears more.",
            "Saturation is that of an ellipsoid of the core's outline in an even field, an estimate for a pot core. Below it the core is linear. What a field does to a"
                    + " core that is driven beyond, and to the target, is not modelled.",
            "Not modelled: fields across the axis, hum on supply and cable, discharge and radio fields, which reach the electronics by other ways; ageing.");

    @Override
    public String answer() {
        DisturbanceResult r = result;
        String field = tesla(r.input().field().fluxDensity()) + " at "
                + hertz(r.input().field().frequency());
        String most = "up to " + tesla(r.largest()) + " at this frequency neither coil nor core is disturbed";
        if (!r.mayDisturb() && !r.saturates()) {
            return "Yes: a field of " + field + " does not change the output; " + most + ".";
        }
        String why = r.saturates() && !r.mayDisturb()
                ? "it saturates the core"
                : r.saturates()
                        ? "it saturates the core and adds to the oscillation more than the thresholds bear"
                        : "what it adds to the oscillation passes a threshold";
        return "No: a field of " + field + " may change the output, since " + why + "; " + most + ".";
    }

    private static String tesla(double t) {
        return t < 1e-3 ? Labels.significant(t * 1e6, 3) + " µT" : Labels.significant(t * MILLITESLA, 3) + " mT";
    }

    private static String hertz(double f) {
        return f < 1000 ? Labels.significant(f, 4) + " Hz" : Labels.frequency(f);
    }

    private static String volts(double v) {
        return v < 1e-3 ? Labels.significant(v * 1e6, 3) + " µV" : Labels.significant(v * 1e3, 3) + " mV";
    }

    @Override
    public List<Picture> pictures() {
        return List.of(new Picture(
                "field",
                "Flux density that the output bears",
                result.model().name() + "; worst case, along the axis, linkage as at the stated frequency",
                result.name(),
                (g, area) -> chart().draw(g, area)));
    }

    private JFreeChart chart() {
        XYSeries free = new XYSeries(0, false);
        free.setDescription("without a target, to the on threshold");
        XYSeries on = new XYSeries(1, false);
        on.setDescription("at the on distance, to the off threshold");
        XYSeries core = new XYSeries(2, false);
        core.setDescription("the core, to saturation");
        result.sweep().forEach(h -> {
            free.add(h.frequency() * Labels.KHZ, h.free() * MILLITESLA, false);
            on.add(h.frequency() * Labels.KHZ, h.on() * MILLITESLA, false);
            result.core().ifPresent(c -> core.add(h.frequency() * Labels.KHZ, c.largestExternal() * MILLITESLA, false));
        });
        XYSeriesCollection data = new XYSeriesCollection(free);
        data.addSeries(on);
        result.core().ifPresent(c -> data.addSeries(core));
        XYPlot plot = DistanceCharts.lines(data, Theme.axis(""), Theme.axis(""));
        plot.setDomainAxis(Theme.decades("frequency of the field, kHz"));
        plot.setRangeAxis(Theme.decades("largest flux density, peak, mT"));
        return Theme.chart(plot, true);
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        return Map.of("field.csv", this::table);
    }

    private Csv table() {
        Csv csv = new Csv("frequency_hz", "largest_without_target_mt", "largest_at_on_distance_mt");
        result.sweep().forEach(h -> csv.row(h.frequency(), h.free() * MILLITESLA, h.on() * MILLITESLA));
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        AlternatingField f = result.input().field();
        JsonNode core = new JsonNode();
        result.core()
                .ifPresent(c -> core.with("saturation_t", c.saturation())
                        .with("concentration", c.concentration())
                        .with("own_t", c.own())
                        .with("margin", c.margin(f.fluxDensity()))
                        .with("largest_external_t", c.largestExternal()));
        document.with("frequency_hz", f.frequency())
                .with("flux_density_t", f.fluxDensity())
                .with("linkage_m2", result.linkage())
                .with("linkage_error_m2", result.error())
                .with("voltage_v", result.free().voltage())
                .with("of_distance_without_target", result.free().ofDistance())
                .with("of_distance_at_on_distance", result.on().ofDistance())
                .with("largest_flux_density_t", result.largest())
                .with("core", core);
    }

    @Override
    public void write(Page page) {
        AlternatingField f = result.input().field();
        page.paragraph("Field: " + tesla(f.fluxDensity()) + " peak at " + hertz(f.frequency()) + " along the axis"
                + (result.input().source().isEmpty()
                        ? "."
                        : ", that of a long straight conductor with "
                                + result.input().source() + " (peak)."));
        page.heading("Added to the oscillation");
        List<Page.Row> rows = new ArrayList<>();
        rows.add(row("without a target", result.free(), result.undamped().amplitude()));
        rows.add(row("at the on distance", result.on(), result.trimmed().onAmplitude()));
        page.table(
                List.of("", "amplitude, V", "added", "of the way to the threshold", "harmless up to"),
                Set.of(1, 2, 3, 4),
                rows);
        page.paragraph("Coil and core link " + Labels.significant(result.linkage() * 1e4, 4) + " ± "
                + Labels.significant(Math.max(result.error(), result.linkage() * 1e-4) * 1e4, 1)
                + " cm² turns at this frequency. Far below its resonance the tank shows the induced voltage as it is.");
        result.core().ifPresent(c -> core(page, c, f.fluxDensity()));
        if (result.core().isEmpty()) {
            page.paragraph("This switch has no core that could saturate.");
        }
        page.items(NOT_MODELLED);
    }

    private static Page.Row row(String name, AlternatingField.Effect e, double amplitude) {
        return new Page.Row(
                List.of(
                        name,
                        Labels.significant(amplitude, 4),
                        volts(e.voltage()),
                        Labels.percent(e.ofDistance(), 2),
                        tesla(e.largestFluxDensity())),
                e.mayDisturb());
    }

    private static void core(Page page, CoreSaturation c, double external) {
        page.heading("Core");
        page.paragraph("The core concentrates the field by a factor of " + Labels.significant(c.concentration(), 3)
                + " to " + tesla(c.concentration() * external) + ", and carries " + tesla(c.own())
                + " of its own; it counts as saturated at " + tesla(c.saturation()) + ". Margin "
                + Labels.significant(c.margin(external), 3) + "; saturated from an external field of "
                + tesla(c.largestExternal()) + " on.");
    }
}
