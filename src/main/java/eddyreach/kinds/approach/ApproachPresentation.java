package eddyreach.kinds.approach;

import eddyreach.engine.core.FieldPicture;
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
        result.fields().stream().map(FieldPicture::parts).forEach(parts::parts);
    }

    @Override
    public List<Material> materials() {
        return result.targets().stream()
                .flatMap(t -> t.target().body().materials().stream())
                .distinct()
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
