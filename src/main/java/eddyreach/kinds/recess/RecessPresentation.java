package eddyreach.kinds.recess;

import eddyreach.kinds.mount.DxfDrawing;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountJson;
import eddyreach.kinds.mount.MountPresentation;
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
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Shows maps over recesses. */
public record RecessPresentation(RecessResult result) implements Presentation {

    @Override
    public String answer() {
        return RecessPage.answer(result);
    }

    @Override
    public List<Picture> pictures() {
        String head = result.model().name() + " · "
                + Labels.frequency(result.undamped().frequency());
        List<Picture> pictures = new ArrayList<>();
        pictures.add(new Picture(
                "recess",
                "Switch-on distance over diameter and depth of a recess" + (result.partial() ? " (partial)" : ""),
                head + " · " + RecessPage.position(result) + " · target "
                        + result.input().target().label() + ", "
                        + Labels.millimetres(result.free().on()) + " mm in free air",
                result.name(),
                new RecessMap(result)));
        for (MountCase c : judged()) {
            pictures.addAll(MountPresentation.single(result.model(), c, head, result.name()));
        }
        return pictures;
    }

    private List<MountCase> judged() {
        return result.panels().stream().flatMap(p -> p.judged().stream()).toList();
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("recess.csv", this::table);
        return tables;
    }

    @Override
    public Map<String, Supplier<String>> drawings() {
        Map<String, Supplier<String>> drawings = new LinkedHashMap<>();
        judged().forEach(c -> drawings.put(
                "section-" + Picture.fileName(c.mount().id()) + ".dxf", () -> DxfDrawing.of(result.model(), c)));
        return drawings;
    }

    private Csv table() {
        Csv csv = new Csv(
                "wall",
                "diameter_mm",
                "depth_mm",
                "outcome",
                "output_without_target",
                "on_mm",
                "off_mm",
                "on_error_mm",
                "shift_of_sr",
                "reserve_used",
                "resolution");
        for (RecessResult.Panel p : result.panels()) {
            p.rows().stream()
                    .flatMap(List::stream)
                    .flatMap(Optional::stream)
                    .forEach(c -> csv.row(
                            p.material().id(),
                            result.diameters()[c.diameter()] * Labels.MM,
                            result.depths()[c.depth()] * Labels.MM,
                            Terms.of(c.distance().outcome()),
                            c.verdict().label(),
                            c.distance().on() * Labels.MM,
                            c.distance().off() * Labels.MM,
                            c.distance().onError() * Labels.MM,
                            c.shift(),
                            c.used(),
                            c.step() > 0 ? "fine" : "coarse"));
        }
        return csv;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with("partial", result.partial());
        document.with("cells", result.cells());
        document.with("cells_computed", (int) result.done());
        document.with("target", parts.target(result.input().target()));
        document.with("wall_thickness_m", result.input().thickness());
        document.with("wall_diameter_m", result.input().outer());
        document.with("bore_m", result.input().bore());
        document.with("surface_above_face_m", result.input().surface());
        document.with("face_at_the_bottom", result.input().bottom());
        document.with("on_in_free_air_m", result.free().on());
        document.with(
                "usual_rules", result.rules().stream().map(MountJson::rule).toList());
        document.with(
                "maps",
                result.panels().stream()
                        .map(p -> new JsonNode()
                                .with("wall", parts.material(p.material()))
                                .with(
                                        "cells",
                                        p.rows().stream()
                                                .flatMap(List::stream)
                                                .flatMap(Optional::stream)
                                                .map(this::cell)
                                                .toList())
                                .with(
                                        "on_the_drawing",
                                        p.judged().stream()
                                                .map(c -> MountJson.found(c, parts))
                                                .toList()))
                        .toList());
    }

    private JsonNode cell(RecessCell c) {
        return new JsonNode()
                .with("diameter_m", result.diameters()[c.diameter()])
                .with("depth_m", result.depths()[c.depth()])
                .with("outcome", Terms.of(c.distance().outcome()))
                .with("verdict", c.verdict().label())
                .with("on_m", c.distance().on())
                .with("off_m", c.distance().off())
                .with("on_error_m", c.distance().onError())
                .with("shift_of_effective_distance", c.shift())
                .with("reserve_used", c.used())
                .with("fine", c.step() > 0);
    }

    @Override
    public List<Material> materials() {
        return Stream.concat(result.input().materials().stream(), result.input().target().body().materials().stream())
                .distinct()
                .toList();
    }

    @Override
    public void write(Page page) {
        RecessPage.write(result, page);
    }
}
