package eddyreach.kinds.approach;

import eddyreach.engine.core.FieldPicture;
import eddyreach.geometry.Part;
import eddyreach.materials.Material;
import eddyreach.report.draw.Picture;
import eddyreach.report.page.Csv;
import eddyreach.report.page.JsonNode;
import eddyreach.report.page.JsonParts;
import eddyreach.report.page.Page;
import eddyreach.report.page.TextPage;
import eddyreach.study.Presentation;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Shows targets that come nearer. */
public record ApproachPresentation(ApproachResult result) implements Presentation {

    @Override
    public String answer() {
        return AnswerTable.sentence(result);
    }

    @Override
    public List<Picture> pictures() {
        return ApproachPictures.of(result);
    }

    @Override
    public Map<String, Supplier<Csv>> tables() {
        Map<String, Supplier<Csv>> tables = new LinkedHashMap<>();
        tables.put("distances.csv", () -> ApproachTables.distances(result));
        result.mounted().ifPresent(m -> tables.put("mounted.csv", () -> ApproachTables.mounted(result, m)));
        tables.put("impedance.csv", () -> ApproachTables.impedance(result));
        return tables;
    }

    @Override
    public void addTo(JsonNode document, JsonParts parts) {
        document.with(
                "targets",
                result.targets().stream()
                        .map(t -> ApproachJson.target(t, parts))
                        .toList());
        result.mounted().ifPresent(m -> document.with("mount", ApproachJson.mounted(m, parts)));
        result.fields().stream().map(FieldPicture::parts).forEach(parts::parts);
    }

    @Override
    public List<Material> materials() {
        return Stream.concat(
                        result.targets().stream().flatMap(t -> t.target().body().materials().stream()),
                        result.mounted().stream()
                                .flatMap(m -> m.parts().stream().map(Part::material)))
                .distinct()
                .toList();
    }

    @Override
    public List<String> inputs() {
        return result.targets().stream()
                .skip(1)
                .flatMap(t -> ToleranceWords.of(t.target()).stream())
                .toList();
    }

    @Override
    public boolean sideways() {
        return result.targets().stream().anyMatch(t -> t.target().offset() > 0);
    }

    @Override
    public void write(Page page) {
        ApproachPage.write(result, page);
    }

    @Override
    public void brief(Page page) {
        ApproachPage.brief(result, page);
    }

    @Override
    public List<String> briefPictures() {
        return ApproachPictures.brief(result);
    }

    @Override
    public void write(TextPage page) {
        ApproachText.write(result, page);
    }
}
