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
import eddyreach.report.words.Cautions;
import eddyreach.report.words.Labels;
import eddyreach.report.words.SwitchText;
import eddyreach.report.words.Terms;
import eddyreach.report.words.WarningText;
import eddyreach.units.Texts;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The pages of a result: the sheet to be sent as the answer to a question, two sides of paper at most where the kind allows it, and the full
 * record. After what the kind of study has to say come, for all kinds alike, pictures, inputs, limits and cautions.
 */
public final class ResultPage {

    private ResultPage() {}

    /**
     * The sheet.
     *
     * @param pictures those of which there are files or that can be embedded
     */
    public static Page sheet(StudyResult result, List<Picture> pictures, Stamp stamp) {
        Presentation presentation = result.presentation();
        Page page = start(result, presentation, stamp);
        presentation.brief(page);
        List<String> shown = presentation.briefPictures();
        pictures.stream().filter(p -> shown.contains(p.name())).forEach(p -> figure(p, page));
        page.heading("Cautions");
        Cautions.PAGE.forEach(page::caution);
        page.heading("Inputs in brief");
        for (StudyResult r : result.members()) {
            SwitchModel m = r.model();
            page.paragraph("Switch: " + SwitchText.name(m) + "; mounting " + Terms.of(m.mounting()) + ", sn "
                    + Labels.length(m.ratedDistance()) + ", active face " + Labels.length(m.faceDiameter())
                    + ", oscillating at " + Labels.frequency(r.undamped().frequency()) + ", trimmed to sr "
                    + Labels.length(m.effectiveDistance()) + " on the standard target ("
                    + r.header().standard().label() + ", " + Labels.length(m.standardSide()) + " square).");
        }
        if (!result.note().isBlank()) {
            page.paragraph("Study: " + result.note());
        }
        page.items(presentation.inputs());
        page.items(warnings(result));
        page.paragraph("The full record with all inputs, materials, limits and pictures is record.html.");
        return page;
    }

    /**
     * The full record.
     *
     * @param pictures those of which there are files or that can be embedded
     */
    public static Page record(StudyResult result, List<Picture> pictures, Stamp stamp) {
        Presentation presentation = result.presentation();
        Page page = start(result, presentation, stamp);
        presentation.write(page);
        if (!pictures.isEmpty()) {
            page.heading("Pictures");
            pictures.forEach(p -> figure(p, page));
        }
        page.heading("Inputs");
        result.members().forEach(r -> switchTable(r, page));
        page.items(presentation.inputs());
        materials(result, presentation, page);
        limits(result, presentation, page);
        page.heading("Cautions");
        Cautions.PAGE.forEach(page::caution);
        return page;
    }

    private static Page start(StudyResult result, Presentation presentation, Stamp stamp) {
        Page page = new Page(Texts.capitalised(result.name()));
        result.switchWarnings().forEach(w -> page.caution("Warning, " + WarningText.withSubject(w) + "."));
        page.answer(presentation.answer());
        List<StudyResult> members = result.members();
        page.paragraph((members.size() == 1 ? "Switch: " : "Switches: ")
                + members.stream().map(r -> SwitchText.name(r.model())).collect(Collectors.joining("; ")) + ". "
                + stamp.line());
        return page;
    }

    private static void figure(Picture p, Page page) {
        page.figure(p.name(), p.title(), p.title() + ". " + p.subtitle());
    }

    private static List<String> warnings(StudyResult result) {
        return WarningText.sentences(result.allWarnings()).stream()
                .map(w -> Texts.capitalised(w) + ".")
                .toList();
    }

    private static void switchTable(StudyResult result, Page page) {
        SwitchModel m = result.model();
        Operating free = result.undamped();
        List<Page.Row> rows = new ArrayList<>();
        rows.add(Page.Row.of("name", m.name()));
        rows.add(Page.Row.of("mounting", Terms.of(m.mounting())));
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
        rows.add(Page.Row.of("output", Terms.of(m.output())));
        page.table(List.of("switch", ""), Set.of(), rows);
        if (!m.note().isBlank()) {
            page.paragraph("About the switch: " + m.note());
        }
    }

    private static void materials(StudyResult result, Presentation presentation, Page page) {
        Set<Material> all = new LinkedHashSet<>(presentation.materials());
        for (StudyResult r : result.members()) {
            all.add(r.model().winding().wire().conductor());
            r.model().parts().stream().map(Part::material).forEach(all::add);
        }
        List<Page.Row> rows = all.stream()
                .map(x -> Page.Row.of(
                        x.name(),
                        conductivity(x),
                        Labels.significant(x.temperatureCoefficient() * 100, 3),
                        x.range()
                                        .map(r -> Labels.significant(r.low(), 4) + " to "
                                                + Labels.significant(r.high(), 4) + ", here ")
                                        .orElse("")
                                + Labels.significant(x.muReal(), 4)
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
                        ? "Switch and target are each axisymmetric about their own axis. The axes are parallel: the target faces the switch"
                                + " without tilt. Nothing else is near."
                        : (edge ? "Everything except a straight edge" : "Everything")
                                + " is axisymmetric about the axis of the switch; the target lies on it, face to face. Nothing else is near.");
        notes.add("Materials are linear: no saturation, no hysteresis, no strong constant field.");
        notes.addAll(warnings(result));
        boolean accurate = result.allWarnings().stream().noneMatch(w -> w.kind() == Warning.Kind.ERROR_ABOVE_REQUEST);
        notes.add("Each ± is the numerical error, from a second, coarser computation; "
                + (accurate ? "each is" : "not all are") + " below the "
                + Labels.significant(result.header().accuracy() * Labels.MM, 2)
                + " mm asked for. It does not cover errors in the inputs."
                + (edge ? " Beside a straight edge the ± includes the uncertainty of its estimate." : ""));
        page.heading("Assumptions and limits");
        page.items(notes);
    }
}
