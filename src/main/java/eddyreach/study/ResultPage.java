package eddyreach.study;

import eddyreach.engine.core.Operating;
import eddyreach.engine.core.Warning;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import eddyreach.materials.Specimen;
import eddyreach.materials.Temperature;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Page;
import eddyreach.report.words.Labels;
import eddyreach.report.words.WarningText;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The page of a result, to be sent as the answer to a question: what the kind of study has to say, then for all kinds alike the pictures,
 * the inputs, the limits touched and the cautions.
 */
public final class ResultPage {

    private static final List<String> CAUTIONS = List.of(
            "These are computed estimates from an idealised model. Confirm them on the machine, with the device, the part and the mount in"
                    + " question, over the whole range of temperature and supply. The device's own instructions prevail.",
            "A proximity switch of this kind is no guard: it must not be the means by which persons are protected. For safety functions and"
                    + " for explosive atmospheres the standards that apply there and competent people decide; nothing here shows that a"
                    + " device is fit for either.");

    private ResultPage() {}

    /**
     * The page.
     *
     * @param pictures those of which there are files or that can be embedded
     */
    public static Page of(StudyResult result, List<Picture> pictures) {
        Page page = new Page(result.name());
        Presentation presentation = result.presentation();
        result.switchWarnings().forEach(w -> page.caution("Warning, " + WarningText.withSubject(w) + "."));
        if (!presentation.answer().isEmpty()) {
            page.answer(presentation.answer());
        }
        presentation.write(page);
        if (!pictures.isEmpty()) {
            page.heading("Pictures");
            pictures.forEach(p -> page.figure(p.name(), p.title(), p.title() + ". " + p.subtitle()));
        }
        page.heading("What went in");
        switchTable(result, page);
        materials(result, presentation, page);
        limits(result, presentation, page);
        page.heading("Cautions");
        CAUTIONS.forEach(page::caution);
        return page;
    }

    private static void switchTable(StudyResult result, Page page) {
        SwitchModel m = result.model();
        Operating free = result.undamped();
        List<Page.Row> rows = new ArrayList<>();
        rows.add(Page.Row.of("switch", m.name()));
        rows.add(Page.Row.of("mounting", m.mounting().label()));
        rows.add(Page.Row.of("rated distance sn", Labels.millimetres(m.ratedDistance()) + " mm"));
        rows.add(Page.Row.of("trimmed to sr", Labels.millimetres(m.effectiveDistance()) + " mm"));
        rows.add(Page.Row.of("active face", Labels.length(m.faceDiameter())));
        rows.add(Page.Row.of(
                "standard target", result.header().standard().label() + ", square " + Labels.length(m.standardSide())));
        rows.add(Page.Row.of(
                "without a target",
                Labels.frequency(free.frequency()) + ", "
                        + Labels.significant(free.inductance() * Labels.MICROHENRY, 4) + " µH, Q "
                        + Labels.significant(free.quality(), 3)));
        rows.add(Page.Row.of(
                "winding",
                m.winding().turns() + " turns, " + m.winding().wire().strands() + " × "
                        + Labels.length(m.winding().wire().copperDiameter())));
        rows.add(Page.Row.of(
                "core and housing",
                m.parts().stream()
                        .map(p -> p.name() + " (" + p.material().name() + ")")
                        .collect(Collectors.joining(", "))));
        rows.add(Page.Row.of("oscillator", m.element().name()));
        rows.add(Page.Row.of("differential travel", Labels.significant(100 * m.differentialTravel(), 3) + " % of sr"));
        rows.add(Page.Row.of("output", m.output().label()));
        page.table(List.of("what", "value"), Set.of(), rows);
        if (!m.note().isBlank()) {
            page.paragraph("Of the switch: " + m.note());
        }
    }

    private static void materials(StudyResult result, Presentation presentation, Page page) {
        SwitchModel m = result.model();
        Set<Material> all = new LinkedHashSet<>(presentation.materials());
        all.add(m.winding().wire().conductor());
        m.parts().stream().map(Part::material).forEach(all::add);
        List<Page.Row> rows = all.stream()
                .map(x -> Page.Row.of(
                        x.name(),
                        conductivity(x),
                        Labels.significant(x.temperatureCoefficient() * 100, 3),
                        Labels.significant(x.muReal(), 4)
                                + (x.muImag() == 0 ? "" : " - j " + Labels.significant(x.muImag(), 3)),
                        x.source()))
                .toList();
        page.table(
                List.of("material", "conductivity at 20 °C, MS/m", "per kelvin, %", "relative permeability", "source"),
                Set.of(1, 2, 3),
                rows);
    }

    /** At 20 degrees Celsius and solid, as tabulated; what is in effect beside it where that is another state. */
    private static String conductivity(Material m) {
        if (m.conductivity20() == 0) {
            return "-";
        }
        String tabulated = Labels.significant(m.conductivity20() * Labels.MEGASIEMENS, 3);
        return m.specimen().equals(Specimen.PLAIN)
                ? tabulated
                : tabulated + "; as here "
                        + Labels.significant(m.conductivity(Temperature.AMBIENT) * Labels.MEGASIEMENS, 3);
    }

    private static void limits(StudyResult result, Presentation presentation, Page page) {
        boolean edge = result.allWarnings().stream().anyMatch(w -> w.kind() == Warning.Kind.STRAIGHT_EDGE);
        List<String> notes = new ArrayList<>();
        notes.add(
                presentation.sideways()
                        ? "Switch and target are each round about an axis of their own; the axes are parallel, so that the target faces"
                                + " the switch without a tilt; nothing else is near."
                        : (edge ? "All but a straight edge" : "All")
                                + " is round about the axis of the switch, on which the target lies face to face; nothing else is near.");
        notes.add("Materials are linear: no saturation, no hysteresis, no strong constant field.");
        result.allWarnings().stream()
                .map(w -> WarningText.withSubject(w) + ".")
                .distinct()
                .forEach(notes::add);
        boolean accurate = result.allWarnings().stream().noneMatch(w -> w.kind() == Warning.Kind.ERROR_ABOVE_REQUEST);
        notes.add("The numerical error behind each ± comes from a second, coarser computation; "
                + (accurate ? "each is" : "not each is") + " below the "
                + Labels.significant(result.header().accuracy() * Labels.MM, 2)
                + " mm asked for. It says nothing about the input."
                + (edge ? " Beside a straight edge the ± also holds what its estimate may be off by." : ""));
        page.heading("Assumptions and limits");
        page.items(notes);
    }
}
