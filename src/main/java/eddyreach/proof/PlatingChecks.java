package eddyreach.proof;

import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.Progress;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.kinds.approach.ApproachResult;
import eddyreach.kinds.approach.ApproachRunner;
import eddyreach.model.read.Materials;
import eddyreach.model.values.Layer;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What platings do to the distance of a shipped switch. */
final class PlatingChecks {

    private static final double UM = 1e-6;
    private static final double MM = 1e-3;

    private final Materials materials = Shipped.materials();
    private final Supplier<ApproachResult> result =
            new ComputedOnce<>(() -> ApproachRunner.run(study(), Progress.NONE));

    List<Check> all() {
        String lower = "by more than the numerical error of a distance";
        String little = "little is taken as 3 %";
        return new CheckList("Platings, switch m18-flush, wide plates")
                .from(Provenance.TRADE, "on steel thin zinc raises or keeps the distance, copper and silver lower it")
                .atLeast(
                        1,
                        "8 µm zinc on steel, on distance over bare",
                        "the direction counts",
                        () -> ratio("zinc", "steel"))
                .atMost(0.99, "8 µm copper on steel over bare", lower, () -> ratio("copper", "steel"))
                .atMost(0.99, "8 µm silver on steel over bare", lower, () -> ratio("silver", "steel"))
                .from(Provenance.TRADE, "thick hot-dip zinc lowers it towards solid zinc")
                .atMost(0.99, "80 µm zinc on steel over bare", lower, () -> ratio("zinc-thick", "steel"))
                .atLeast(
                        1,
                        "80 µm zinc on steel over solid zinc",
                        "the direction counts",
                        () -> ratio("zinc-thick", "zinc-solid"))
                .from(Provenance.TRADE, "on brass thin platings that are not magnetic change little")
                .range("5 µm tin on brass over bare", 0.97, 1.03, little, () -> ratio("tin", "brass"))
                .range("5 µm chromium on brass over bare", 0.97, 1.03, little, () -> ratio("chromium", "brass"))
                .list();
    }

    private double ratio(String plated, String bare) {
        return on(plated) / on(bare);
    }

    private double on(String id) {
        return result.get().targets().stream()
                .filter(t -> t.target().id().equals(id))
                .map(TargetResult::distance)
                .findFirst()
                .orElseThrow()
                .on();
    }

    private ApproachInput study() {
        SwitchModel model = Shipped.switchModel("m18-flush");
        Layer steel = layer(Materials.STANDARD_STEEL, 1.5 * MM);
        Layer brass = layer("brass", 1.5 * MM);
        List<Target> targets = List.of(
                plate("steel", steel),
                plate("zinc", layer("zinc", 8 * UM), steel),
                plate("copper", layer("copper", 8 * UM), steel),
                plate("silver", layer("silver", 8 * UM), steel),
                plate("zinc-thick", layer("zinc", 80 * UM), steel),
                plate("zinc-solid", layer("zinc", 1.5 * MM)),
                plate("brass", brass),
                plate("tin", layer("tin", 5 * UM), brass),
                plate("chromium", layer("chromium", 5 * UM), brass));
        Target standard = new Target(
                "standard",
                "standard target",
                new Target.Outline.Square(model.standardSide()),
                List.of(layer(Materials.STANDARD_STEEL, 1 * MM)));
        return new ApproachInput(
                new StudyHeader(
                        "platings",
                        "platings",
                        "",
                        ApproachKind.APPROACH,
                        model,
                        standard,
                        StudyInput.defaultAccuracy(model)),
                targets,
                Map.of(),
                0,
                StudyInput.defaultReach(model),
                21,
                false);
    }

    private Layer layer(String id, double thickness) {
        return new Layer(materials.get(id), thickness);
    }

    private static Target plate(String id, Layer... layers) {
        return new Target(id, id, new Target.Outline.Endless(), List.of(layers));
    }
}
