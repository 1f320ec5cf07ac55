package eddyreach.kinds.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.DistanceFinder;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.Warning;
import eddyreach.field.join.PlacedTarget;
import eddyreach.materials.Temperature;
import eddyreach.model.read.Library;
import eddyreach.model.read.ValueRange;
import eddyreach.studies.StudyReader;
import eddyreach.study.StudyResult;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The shipped sweeps show what physics says they must; the signs of platings are those of the trade. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedSweepsTest {

    private final Library library = new Library(Path.of(""));
    private final Map<String, StudyResult> known = new ConcurrentHashMap<>();

    private SweepInput input(String id) {
        return (SweepInput) StudyReader.read(library.studyFile(id), library);
    }

    private StudyResult result(String id) {
        return known.computeIfAbsent(id, i -> input(i).run());
    }

    private ThicknessResult.Metal metal(String id) {
        return ((ThicknessResult) result("m18-foil-thickness"))
                .metals().stream()
                        .filter(m -> m.material().id().equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    private static double on(List<MarkedPoint> marked, double value) {
        return marked.stream()
                .map(MarkedPoint::point)
                .filter(p -> Math.abs(p.value() / value - 1) < 1e-9)
                .findFirst()
                .orElseThrow()
                .on();
    }

    /** At 200 to 500 kHz a sheet of aluminium takes the most loss at 3 to 7 um, k delta^2, and the distance has its top near there. */
    @Test
    void distanceOverThicknessHasItsTopNearTheSheetsOptimum() {
        for (String id : List.of("stainless-304", "brass", "aluminium", "copper")) {
            ThicknessResult.Metal m = metal(id);
            double top = m.highest().orElseThrow().value();
            assertThat(m.inside()).as(id).isTrue();
            assertThat(m.optimum()).as(id).isCloseTo(mostLoss(m), within(0.1 * m.optimum()));
            assertThat(top / m.optimum()).as(id).isBetween(0.5, 2.0);
        }
        assertThat(metal("aluminium").optimum()).isBetween(3e-6, 7e-6);
    }

    /** Thickness at which the exact reflection of a plate takes the most loss from a wave of the dominant wavenumber, by trial, m. */
    private double mostLoss(ThicknessResult.Metal m) {
        double omega = 2 * Math.PI * result("m18-foil-thickness").undamped().frequency();
        double conductivity = m.material().conductivity(Temperature.AMBIENT);
        double best = 0;
        double most = 0;
        for (double t = 0.5e-6; t < 200e-6; t *= 1.01) {
            // a plate in air: its admittance at the front is q (k + q tanh qt) / (q + k tanh qt) over that of air, k
            Complex q = new Complex(m.wavenumber() * m.wavenumber(), omega * 4e-7 * Math.PI * conductivity).sqrt();
            Complex tanh = q.multiply(t).tanh();
            Complex k = new Complex(m.wavenumber());
            Complex y = q.multiply(k.add(q.multiply(tanh))).divide(q.add(k.multiply(tanh)));
            double loss = -k.subtract(y).divide(k.add(y)).getImaginary();
            if (Math.abs(loss) > most) {
                most = Math.abs(loss);
                best = t;
            }
        }
        return best;
    }

    @Test
    void foilIsSeenFromFartherThanSheetAndThickMetalIsLevelAfterAShallowDip() {
        for (String id : List.of("brass", "aluminium", "copper")) {
            ThicknessResult.Metal m = metal(id);
            double foil = on(m.marked(), 10e-6);
            double sheet = on(m.marked(), 1e-3);
            assertThat(foil).as(id).isGreaterThan(1.5 * sheet);
            List<SweepPoint> thick = m.curve().points().stream()
                    .filter(p -> p.value() > 3 * m.skinDepth())
                    .toList();
            assertThat(thick).as(id).allSatisfy(p -> assertThat(p.on()).isCloseTo(sheet, within(0.01 * sheet)));
            double dip = m.curve().points().stream()
                    .filter(p -> p.value() > m.skinDepth())
                    .mapToDouble(SweepPoint::on)
                    .min()
                    .orElseThrow();
            assertThat(dip).as(id).isBetween(0.9 * sheet, 0.99 * sheet);
        }
    }

    /** On the rising side the distance grows with the sheet's conductance sigma t only. */
    @Test
    void thinSheetsOfEqualConductanceAreSeenAlike() {
        ThicknessResult result = (ThicknessResult) result("m18-foil-thickness");
        SweepInput.Thickness input = result.input();
        Sweep sweep = new Sweep(input, input.reach(), List.of(), Progress.NONE);
        double conductance = 40;
        List<SwitchDistance> found = sweep.of(
                Stream.of("stainless-304", "brass", "aluminium", "copper")
                        .map(id -> metal(id).material())
                        .map(m -> input.target(m, conductance / m.conductivity(Temperature.AMBIENT)))
                        .toList(),
                "sheets");
        double first = found.get(3).on();
        assertThat(first).isPositive();
        // of the 29 um of stainless steel the far side lies that much farther away
        assertThat(found).allSatisfy(d -> assertThat(d.on()).isCloseTo(first, within(30e-6)));
    }

    @Test
    void metallisedFilmIsNeverOnAndItsCurveSaysSo() {
        SweepCurve aluminium = metal("aluminium").curve();
        assertThat(aluminium.points().get(0).distance().outcome()).isEqualTo(SwitchDistance.Outcome.NEVER_ON);
        assertThat(aluminium.points().get(0).on()).isNaN();
        assertThat(aluminium.lastUnseen().orElseThrow().value()).isBetween(50e-9, 200e-9);
        assertThat(SweepWords.reason(metal("aluminium"), 12.5e-3)).contains("never on up to");
    }

    /** A sweep's points are those of an approach. */
    @Test
    void pointsAgreeWithTheOneByOnePath() {
        SweepInput.Thickness input = ((ThicknessResult) result("m18-foil-thickness")).input();
        ResolutionLadder ladder = new ResolutionLadder(input.setup(), List.of(input.standard()), Progress.NONE);
        DistanceFinder fine = new DistanceFinder(
                input.setup(),
                ladder.step(ResolutionLadder.FIRST),
                ladder.step(ResolutionLadder.FIRST - 1),
                input.reach(),
                100);
        SweepPoint point = metal("copper").curve().points().get(40);
        var target = input.target(metal("copper").material(), point.value());
        SolvedSwitch solved = fine.fine().solved();
        PlacedTarget field = solved.target(target);
        SwitchDistance one = fine.distance(
                fine.points(g -> solved.state(field, g).conductance()),
                target,
                field,
                fine.coarse().solved().target(target));
        assertThat(point.on()).isCloseTo(one.on(), within(1e-9));
        assertThat(point.distance().onError()).isCloseTo(one.onError(), within(1e-9));
        assertThat(point.distance().off()).isCloseTo(one.off(), within(1e-9));
    }

    @Test
    void everyDistanceHasItsErrorBarBelowTheAccuracy() {
        Stream<SweepCurve> curves = Stream.of(
                        ((ThicknessResult) result("m18-foil-thickness"))
                                .metals().stream().map(ThicknessResult.Metal::curve),
                        ((SizeResult) result("m18-size")).materials().stream().map(SizeResult.Item::curve),
                        ((LayersResult) result("m18-plating"))
                                .coatings().stream().map(LayersResult.Item::curve))
                .flatMap(s -> s);
        double accuracy = input("m18-size").accuracy();
        assertThat(curves.flatMap(c -> c.points().stream()).filter(p -> Double.isFinite(p.on())))
                .hasSizeGreaterThan(400)
                .allSatisfy(p -> assertThat(p.distance().onError()).isPositive().isLessThan(accuracy));
        assertThat(known.values())
                .allSatisfy(r -> assertThat(r.warnings())
                        .extracting(Warning::kind)
                        .doesNotContain(Warning.Kind.ERROR_ABOVE_REQUEST));
    }

    @Test
    void distanceGrowsWithTheSizeAndLevelsWithinTheTradesRange() {
        SizeResult result = (SizeResult) result("m18-size");
        SizeResult.Item steel = result.materials().get(0);
        List<Double> seen = steel.curve().points().stream()
                .filter(SweepPoint::seen)
                .map(SweepPoint::on)
                .toList();
        assertThat(seen.subList(0, seen.size() - 6)).isSorted();
        assertThat(steel.curve().levelFrom(0.01).orElseThrow().value()).isBetween(0.7 * 18e-3, 1.3 * 18e-3);
        for (MarkedPoint t : steel.marked()) {
            double ratio = t.point().value() / result.reference();
            double share = t.point().on() / steel.standard().on();
            SizeDerating.usual(ratio)
                    .filter(b -> b.low() < b.high())
                    .ifPresent(b -> assertThat(share).as("ratio " + ratio).isBetween(b.low(), b.high()));
        }
    }

    @Test
    void theSmallestSizeSeenIsAnEdge() {
        SizeResult result = (SizeResult) result("m18-size");
        for (SizeResult.Item item : result.materials()) {
            List<SweepPoint> points = item.curve().points();
            assertThat(points).extracting(SweepPoint::value).isSorted();
            SweepPoint unseen = item.curve().lastUnseen().orElseThrow();
            assertThat(item.smallest())
                    .isEqualTo(item.curve().firstSeen().orElseThrow().value());
            assertThat(item.smallest() / unseen.value()).isBetween(1.0, 1.01);
        }
    }

    /** Where the skin is thin, the reflection depends on mu_r delta, that is on permeability over conductivity only. */
    @Test
    void skinLimitedMetalsOfEqualRatioAreSeenAlike() {
        SweepInput.Conductivity input = (SweepInput.Conductivity) input("m18-conductivity-map");
        ConductivityResult result = (ConductivityResult) new SweepInput.Conductivity(
                        input.header(),
                        input.materials().subList(0, 1),
                        input.outline(),
                        input.thickness(),
                        new ValueRange(5e6, 45e6, 2),
                        new ValueRange(20, 180, 2),
                        input.reach())
                .run();
        double low = result.rows().get(0).get(0).on();
        double high = result.rows().get(1).get(1).on();
        assertThat(high).isCloseTo(low, within(2e-3 * low));
        assertThat(result.rows().get(0).get(1).on()).isLessThan(0.95 * low);
    }

    @Test
    void theMapAndItsDotsAgree() {
        ConductivityResult result = (ConductivityResult) result("m18-conductivity-map");
        List<Double> plain = result.dots().stream()
                .filter(d -> result.covers(d) && d.material().muReal() == 1)
                .sorted((a, b) -> Double.compare(b.conductivity(), a.conductivity()))
                .map(d -> d.distance().on())
                .toList();
        assertThat(plain)
                .as("the better it conducts, the less a plate is seen")
                .hasSize(8)
                .isSorted();
        double[] sigma = result.conductivities();
        for (ConductivityResult.Dot d : result.dots()) {
            if (result.covers(d) && d.material().muReal() == 1) {
                int i = 1;
                while (sigma[i] < d.conductivity()) {
                    i++;
                }
                List<SwitchDistance> row = result.rows().get(0);
                assertThat(d.distance().on())
                        .as(d.material().id())
                        .isBetween(row.get(i).on(), row.get(i - 1).on());
            }
        }
    }

    private LayersResult.Item coating(String id) {
        return ((LayersResult) result("m18-plating"))
                .coatings().stream()
                        .filter(i -> i.material().id().equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    /** Signs of the trade: thin zinc raises or keeps the distance, copper and silver lower it, thick zinc goes towards solid zinc. */
    @Test
    void platingsMoveTheDistanceAsTheTradeKnows() {
        double bare = ((LayersResult) result("m18-plating")).bare().on();
        for (double t : new double[] {5e-6, 10e-6}) {
            assertThat(on(coating("zinc").marked(), t) / bare).isBetween(1.0, 1.2);
            assertThat(on(coating("tin").marked(), t) / bare).isBetween(1.0, 1.2);
        }
        assertThat(on(coating("copper").marked(), 10e-6) / bare).isBetween(0.70, 0.95);
        assertThat(on(coating("silver").marked(), 10e-6) / bare).isBetween(0.60, 0.95);
        double thick = on(coating("zinc").marked(), 100e-6);
        assertThat(thick / bare).isLessThan(0.9);
        assertThat(thick).isGreaterThan(coating("zinc").solid().on());
        assertThat(coating("zinc").curve().points().get(0).on())
                .as("no coating")
                .isEqualTo(bare);
    }

    /** What is drawn is not what is searched: a short reach changes no answer. */
    @Test
    void aShortReachChangesNoAnswer() {
        ThicknessResult all = (ThicknessResult) result("m18-foil-thickness");
        SweepInput.Thickness asked = all.input();
        SweepInput.Layers plating = (SweepInput.Layers) input("m18-plating");
        for (double reach : new double[] {3e-3, 10e-6}) {
            ThicknessResult few = (ThicknessResult) new SweepInput.Thickness(
                            asked.header(), asked.materials(), asked.outline(), asked.thicknesses(), reach)
                    .run();
            assertThat(SweepWords.answer(few)).isEqualTo(SweepWords.answer(all));
            LayersResult coated = (LayersResult) new SweepInput.Layers(
                            plating.header(),
                            plating.base(),
                            plating.coatings(),
                            plating.outline(),
                            plating.thicknesses(),
                            reach)
                    .run();
            assertThat(coated.coatings())
                    .extracting(i -> SweepWords.reason(i, coated.reference(), plating.searched()))
                    .isEqualTo(((LayersResult) result("m18-plating"))
                            .coatings().stream()
                                    .map(i -> SweepWords.reason(i, coated.reference(), plating.searched()))
                                    .toList());
        }
    }

    /** A curve that leaves the distances searched has no largest distance and is not level. */
    @Test
    void aCurveThatIsCutOffGetsNoVerdict() {
        SwitchDistance beyond =
                new SwitchDistance(SwitchDistance.Outcome.BEYOND_RANGE, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
        SweepCurve cut = new SweepCurve("a", "a", List.of(new SweepPoint(1e-6, beyond), new SweepPoint(2e-6, beyond)));
        LayersResult.Item zinc = coating("zinc");
        LayersResult.Item item =
                new LayersResult.Item(zinc.material(), cut, beyond, List.of(), zinc.optimum(), zinc.skinDepth());
        assertThat(SweepWords.reason(item, 5e-3, 12.5e-3))
                .isEqualTo(
                        "At some thicknesses the coated target is detected from beyond 12.5 mm, the largest distance searched."
                                + " Set a larger reach.");
    }
}
