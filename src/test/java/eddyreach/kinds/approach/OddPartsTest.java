package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.Reason;
import eddyreach.engine.assure.TargetResult;
import eddyreach.engine.core.LossBudget;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Odd parts through the whole program: where they switch, what is said of them. */
class OddPartsTest {

    private static final String STUDY = """
            eddyreach: study
            name: odd
            kind: approach
            switch: m18-flush
            field pictures: no
            targets:
              - {name: disc, shape: disc, diameter: 16 mm, thickness: 3 mm, material: stainless-304}
              - {name: cylinder, shape: cylinder, diameter: 16 mm, length: 3 mm, material: stainless-304}
              - {name: pierced, shape: washer, outer: 16 mm, inner: 0.4 mm, thickness: 3 mm, material: stainless-304}
              - {name: washer, shape: washer, outer: 16 mm, inner: 8 mm, thickness: 1 mm, material: brass}
              - {name: coated, shape: washer, outer: 16 mm, inner: 8 mm, thickness: 1 mm, material: brass,
                 coating: {material: brass, thickness: 0.1 mm}}
              - {name: plate, shape: plate, thickness: 20 mm, material: stainless-304}
              - {name: ball-10, shape: sphere, diameter: 10 mm, material: stainless-304}
              - {name: ball-25, shape: sphere, diameter: 25 mm, material: stainless-304}
              - {name: ball-200, shape: sphere, diameter: 200 mm, material: stainless-304}
              - {name: sheet, shape: plate, thickness: 1 mm, material: stainless-304}
              - {name: painted, shape: plate,
                 layers: [{material: plastic, thickness: 0.8 mm}, {material: stainless-304, thickness: 1 mm}]}
              - {name: holes, material: aluminium, thickness: 1 mm, open area: 40 %}
              - {name: mesh, shape: rectangle, width: 10 mm, height: 30 mm, material: copper,
                 mesh: {wire: 0.5 mm, pitch: 4 mm}}
              - {name: slit, shape: washer, outer: 14 mm, inner: 11 mm, thickness: 0.2 mm, material: stainless-304,
                 slit: yes}
              - {name: glass, shape: sphere, diameter: 10 mm, material: glass}
              - {name: wood, shape: washer, outer: 14 mm, inner: 11 mm, thickness: 2 mm, material: wood, slit: yes}
              - {name: wide, shape: washer, outer: 400 mm, inner: 10 mm, thickness: 1 mm, material: stainless-304}
              - {name: less-wide, shape: washer, outer: 80 mm, inner: 10 mm, thickness: 1 mm, material: stainless-304}
              - {name: far, shape: tube, outer: 200 mm, wall: 2 mm, length: 10 mm, material: copper}
              - {name: plated, shape: disc, diameter: 20 mm,
                 layers: [{material: zinc, thickness: 8 um}, {material: fe360, thickness: 2 mm}]}
              - {name: plated-plate, shape: plate,
                 layers: [{material: zinc, thickness: 8 um}, {material: fe360, thickness: 2 mm}]}
            """;

    private static final Map<String, TargetResult> RESULTS = new HashMap<>();

    @BeforeAll
    static void run(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("odd.yaml"), STUDY);
        ApproachInput study = (ApproachInput) StudyReader.read(new SourceFile.OnDisk(file), new Library(Path.of("")));
        ApproachRunner.run(study).targets().forEach(t -> RESULTS.put(t.target().id(), t));
    }

    private static double on(String id) {
        return RESULTS.get(id).distance().on();
    }

    private static double error(String id) {
        return RESULTS.get(id).distance().onError();
    }

    private static List<Warning.Kind> kinds(String id) {
        return RESULTS.get(id).warnings().stream().map(Warning::kind).toList();
    }

    @Test
    void aDiscIsACylinderAndAWasherWithNextToNoHole() {
        assertThat(on("cylinder")).isEqualTo(on("disc"));
        assertThat(on("pierced")).isCloseTo(on("disc"), within(error("disc") + error("pierced")));
    }

    @Test
    void aCoatingOfTheSameMetalIsNone() {
        assertThat(on("coated")).isCloseTo(on("washer"), within(error("washer")));
    }

    @Test
    void aLargeBallIsNearlyAPlate() {
        assertThat(List.of(on("ball-10"), on("ball-25"), on("ball-200"), on("plate")))
                .isSorted()
                .doesNotHaveDuplicates();
        assertThat(on("ball-200") / on("plate")).isGreaterThan(0.95);
    }

    @Test
    void sheetsWithOpeningsSayWhatTheyAre() {
        assertThat(kinds("holes")).contains(Warning.Kind.OPEN_AREA_AS_SHEET, Warning.Kind.OPEN_AREA_THICK);
        assertThat(kinds("mesh"))
                .contains(Warning.Kind.MESH_AS_SHEET, Warning.Kind.MESH_COARSE, Warning.Kind.RECTANGLE_LONG);
    }

    /** Paint keeps the metal away by its thickness: the on distance is less by just that. */
    @Test
    void paintCountsInTheDistance() {
        assertThat(on("painted")).isCloseTo(on("sheet") - 0.8e-3, within(1e-8));
        assertThat(RESULTS.get("painted").reason().cause())
                .isInstanceOfSatisfying(
                        Reason.Layers.class, l -> assertThat(l.spacing()).isCloseTo(0.8e-3, within(1e-12)));
    }

    @Test
    void slitRings() {
        assertThat(RESULTS.get("slit").reason().cause())
                .isInstanceOfSatisfying(
                        Reason.Rings.class, r -> assertThat(r.slit()).isTrue());
        assertThat(kinds("slit")).contains(Warning.Kind.SLIT_AS_NARROW);
    }

    @Test
    void nonMetalsHaveNoEffect() {
        for (String id : List.of("glass", "wood")) {
            assertThat(RESULTS.get(id).distance().outcome()).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
            assertThat(RESULTS.get(id).reason().cause()).isInstanceOf(Reason.NoEffect.class);
            assertThat(kinds(id)).isEmpty();
        }
    }

    @Test
    void wideRingsAreCutAndSaySo() {
        assertThat(kinds("wide")).contains(Warning.Kind.WIDE_RINGS_CUT);
        assertThat(kinds("less-wide")).doesNotContain(Warning.Kind.WIDE_RINGS_CUT);
        assertThat(on("wide")).isCloseTo(on("less-wide"), within(2e-5));
        assertThat(kinds("far")).contains(Warning.Kind.WIDE_RINGS_CUT);
        assertThat(RESULTS.get("far").distance().outcome()).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
    }

    /** The loss by layer named in a reason is that of the budget, and for an endless plate that of the recursion. */
    @Test
    void reasonsOfLayersFollowTheLoss() {
        TargetResult disc = RESULTS.get("plated");
        List<LossBudget.Share> shares = disc.budget().shares();
        double zinc = shares.get(shares.size() - 2).resistance();
        double steel = shares.get(shares.size() - 1).resistance();
        double share = zinc / (zinc + steel);
        assertThat(zinc(disc)).isCloseTo(share, within(1e-12));
        assertThat(((Reason.Layers) disc.reason().cause()).front().thin()).isTrue();
        assertThat(zinc(RESULTS.get("plated-plate"))).isCloseTo(share, within(0.03));
    }

    private static double zinc(TargetResult result) {
        return ((Reason.Layers) result.reason().cause())
                .shares().stream()
                        .filter(s -> s.material().equals("zinc"))
                        .findFirst()
                        .orElseThrow()
                        .share();
    }
}
