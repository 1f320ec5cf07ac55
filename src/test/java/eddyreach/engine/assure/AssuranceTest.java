package eddyreach.engine.assure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.Assurance.Cause;
import eddyreach.engine.assure.Assurance.Contribution;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ApproachKind;
import eddyreach.materials.Material;
import eddyreach.materials.PermeabilityRange;
import eddyreach.materials.Temperature;
import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.values.Texture;
import eddyreach.model.values.ThicknessTolerance;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import eddyreach.switching.StandardQuantities;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bands of assurance: the standard's numbers where they apply, in order, and wider with each allowance. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AssuranceTest {

    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Materials MATERIALS = LIBRARY.materials();

    private final Map<String, ResolutionLadder> ladders = new ConcurrentHashMap<>();

    private static StudyInput study(String id) {
        SwitchModel model = LIBRARY.switchModel(id);
        Target standard = TargetReader.standard(MATERIALS.get(Materials.STANDARD_STEEL), model);
        StudyHeader header = new StudyHeader(
                "s", "s", "", ApproachKind.APPROACH, model, standard, StudyInput.defaultAccuracy(model));
        return new ApproachInput(header, List.of(), Map.of(), 0, StudyInput.defaultReach(model), 61, false);
    }

    private ResolutionLadder ladder(String id) {
        return ladders.computeIfAbsent(
                id, i -> new ResolutionLadder(study(i).setup(), List.of(study(i).standard()), Progress.NONE));
    }

    private SwitchDistance distance(String id, Target target) {
        ResolutionLadder ladder = ladder(id);
        return ((ApproachInput) study(id))
                .approach(ladder.step(ResolutionLadder.FIRST), ladder.step(0))
                .of(target)
                .distance();
    }

    private Assurance band(String id, Target target, Allowances allowances) {
        TrialSwitches trials = new TrialSwitches(study(id).setup(), List.of(target));
        return new AssuranceFinder(study(id).setup(), trials.plain(), allowances, () -> {})
                .of(target, trials.curve(target), distance(id, target));
    }

    private static Target sheet(String material, double thickness) {
        SwitchModel model = LIBRARY.switchModel("m18-flush");
        return new Target(
                "t",
                "t",
                new Target.Outline.Square(model.standardSide()),
                List.of(new Layer(MATERIALS.get(material), thickness)));
    }

    /** Temperature alone carries the large non-flush switch without a core far beyond the limits, so that its compensation counts too. */
    @ParameterizedTest
    @ValueSource(strings = {"m18-flush", "m12-flush", "m18-non-flush-no-core"})
    void theStandardTargetsBandIsTheStandards(String id) {
        SwitchModel model = LIBRARY.switchModel(id);
        StandardQuantities standard = new StandardQuantities(model.ratedDistance(), model.faceDiameter());
        Assurance band = band(id, study(id).standard(), Allowances.STANDARD);
        // the spline through the coarse samples costs a few parts in ten thousand
        double sn = model.ratedDistance();
        assertThat(band.assuredOn()).isCloseTo(standard.assured(), within(1e-3 * sn));
        assertThat(band.assuredOff()).isCloseTo(standard.sureRelease(), within(1e-3 * sn));
        assertThat(band.assuredOn() / sn).isCloseTo(0.81, within(1e-3));
        assertThat(band.assuredOff() / sn).isCloseTo(1.43, within(1e-3));
    }

    @Test
    void aStatedDifferentialTravelTakesThePlaceOfTheStandards() {
        SwitchModel model = LIBRARY.switchModel("m18-flush");
        Assurance band = band("m18-flush", study("m18-flush").standard(), Allowances.of(model));
        double expected = (1.21 + 1.1 * model.differentialTravel()) * model.ratedDistance();
        assertThat(band.assuredOff()).isCloseTo(expected, within(1e-3 * model.ratedDistance()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"copper", "aluminium", "stainless-304", "nickel", "fe360"})
    void distancesAreInOrder(String material) {
        Target target = sheet(material, material.equals("fe360") ? 0.5e-3 : 1e-3);
        SwitchDistance d = distance("m18-flush", target);
        Assurance band = band("m18-flush", target, Allowances.of(LIBRARY.switchModel("m18-flush")));
        assertThat(List.of(band.assuredOn(), d.on(), d.off(), band.assuredOff()))
                .isSorted();
        assertThat(band.comfortable()).isLessThan(band.recommended());
        assertThat(band.recommended()).isLessThan(band.assuredOn());
        for (Contribution c : band.contributions()) {
            assertThat(c.shortest()).as("%s", c).isBetween(band.assuredOn(), d.on());
            assertThat(c.longest()).as("%s", c).isBetween(d.on(), band.assuredOff());
        }
        assertThat(band.contributions()).extracting(Contribution::cause).contains(Cause.SPREAD, Cause.CONDUCTIVITY);
        assertThat(band.contributions().stream().anyMatch(c -> c.cause() == Cause.PERMEABILITY))
                .isEqualTo(MATERIALS.get(material).muReal() > 1);
    }

    private static Allowances none() {
        return new Allowances(0, 0, 0.05, Temperature.AMBIENT, Temperature.AMBIENT, 0, 150, 150.001);
    }

    @Test
    void withoutAllowancesTheBandIsWhatWasFound() {
        Target target = sheet("aluminium", 1e-3);
        SwitchDistance d = distance("m18-flush", target);
        Assurance band = band("m18-flush", target, none());
        assertThat(band.assuredOn()).isCloseTo(d.on() - d.onError(), within(5e-6));
        assertThat(band.assuredOff()).isCloseTo(d.off() + d.offError(), within(5e-6));
    }

    /** Each allowance widened alone widens the band, or leaves an end where it is. */
    @Test
    void theBandGrowsWithEachAllowance() {
        Allowances n = none();
        List<Allowances> wider = List.of(
                new Allowances(0.1, 0, 0.05, 23, 23, 0, 150, 150.001),
                new Allowances(0, 0.1, 0.05, 23, 23, 0, 150, 150.001),
                new Allowances(0, 0, 0.2, 23, 23, 0, 150, 150.001),
                new Allowances(0, 0.1, 0.05, -25, 70, 0, 150, 150.001),
                new Allowances(0, 0, 0.05, 23, 23, 0.2, 150, 150.001));
        Target target = sheet("brass", 0.5e-3);
        Assurance narrow = band("m18-flush", target, n);
        for (Allowances a : wider) {
            Assurance wide = band("m18-flush", target, a);
            assertThat(wide.assuredOn()).as("%s", a).isLessThanOrEqualTo(narrow.assuredOn() + 1e-7);
            assertThat(wide.assuredOff()).as("%s", a).isGreaterThanOrEqualTo(narrow.assuredOff() - 1e-7);
            assertThat(wide.assuredOff() - wide.assuredOn())
                    .as("%s", a)
                    .isGreaterThan(narrow.assuredOff() - narrow.assuredOn() + 5e-6);
        }
    }

    /** Deviations at the rough resolution are those at the one that gives results. */
    @ParameterizedTest
    @ValueSource(strings = {"aluminium", "stainless-304", "fe360"})
    void theRoughResolutionServes(String material) {
        StudyInput study = study("m18-flush");
        Target target = new Target(
                "t", "t", new Target.Outline.Disc(12e-3), List.of(new Layer(MATERIALS.get(material), 0.8e-3)));
        Allowances allowances = Allowances.of(LIBRARY.switchModel("m18-flush"));
        ResolutionLadder.Step fine = ladder("m18-flush").step(ResolutionLadder.FIRST);
        Assurance exact = new AssuranceFinder(study.setup(), fine, allowances, () -> {})
                .of(target, ConductanceCurve.of(fine.solved(), target), distance("m18-flush", target));
        Assurance band = band("m18-flush", target, allowances);
        double most = 5e-4 * LIBRARY.switchModel("m18-flush").faceDiameter();
        assertThat(band.assuredOn()).isCloseTo(exact.assuredOn(), within(most));
        assertThat(band.assuredOff()).isCloseTo(exact.assuredOff(), within(most));
    }

    @Test
    void whatHasNoEffectIsSurelyOffEverywhere() {
        Assurance band = band("m18-flush", sheet("water", 5e-3), Allowances.STANDARD);
        assertThat(band.anywhereOn()).isFalse();
        assertThat(band.recommended()).isNaN();
        assertThat(band.assuredOff()).isZero();
    }

    /** A fifth of conductivity hardly matters for this steel, but does where its permeability is low: no combination of both is nearer. */
    @Test
    void theWorstOfTwoPropertiesTogetherIsFound() {
        StudyInput study = study("m18-flush");
        Target target =
                new Target("t", "t", new Target.Outline.Disc(20e-3), List.of(new Layer(MATERIALS.get("fe360"), 2e-3)));
        Allowances material = new Allowances(0, 0, 0.05, Temperature.AMBIENT, Temperature.AMBIENT, 0.2, 50, 300);
        Assurance band = band("m18-flush", target, material);
        TrialSwitches trials = new TrialSwitches(study.setup(), List.of(target));
        double nearest = Double.POSITIVE_INFINITY;
        for (double conductivity : new double[] {0.8, 1, 1.2}) {
            for (double mu : new double[] {50, 150, 300}) {
                Target tried = Variants.permeability(Variants.conductivity(target, conductivity), m -> mu);
                nearest =
                        Math.min(nearest, trials.curve(tried).on(trials.plain().trim()));
            }
        }
        SwitchDistance d = distance("m18-flush", target);
        double rough = trials.curve(target).on(trials.plain().trim());
        assertThat(band.assuredOn()).isCloseTo(d.on() + nearest - rough - d.onError(), within(1e-7));
    }

    private static Contribution of(Assurance band, Cause cause) {
        return band.contributions().stream()
                .filter(c -> c.cause() == cause)
                .findFirst()
                .orElseThrow();
    }

    /** A permeability that is stated as a range counts even where the target is taken as stated; its largest distance may lie in between. */
    @Test
    void aRangeOfPermeabilityIsFollowedFromEndToEnd() {
        StudyInput study = study("m18-flush");
        Material nickel = MATERIALS.get("nickel");
        PermeabilityRange range = nickel.range().orElseThrow();
        Target target = sheet("nickel", 1e-3);
        Contribution found = of(band("m18-flush", target, none()), Cause.PERMEABILITY);
        TrialSwitches trials = new TrialSwitches(study.setup(), List.of(target));
        double shift = distance("m18-flush", target).on()
                - trials.curve(target).on(trials.plain().trim());
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 0; i <= 40; i++) {
            double mu = range.low() * Math.pow(range.high() / range.low(), i / 40.0);
            double on = shift
                    + trials.curve(Variants.permeability(target, m -> mu))
                            .on(trials.plain().trim());
            least = Math.min(least, on);
            most = Math.max(most, on);
        }
        assertThat(found.shortest()).isCloseTo(least, within(1e-6));
        assertThat(found.longest()).isCloseTo(most, within(2e-6));
        assertThat(most - least).isGreaterThan(0.5e-3);
    }

    /** A foil is a resistor: a tenth of its thickness moves it as a tenth of its conductivity does, and the band takes both ends. */
    @Test
    void theThicknessOfAFoilHasItsOwnPart() {
        StudyInput study = study("m18-flush");
        Target exact = sheet("aluminium", 3e-6);
        Target target = new Target("t", "t", exact.body(), 0, List.of(ThicknessTolerance.stated(0.2)));
        Allowances allowances = Allowances.of(study.switchModel());
        Assurance band = band("m18-flush", target, allowances);
        Contribution thickness = of(band, Cause.THICKNESS);
        Contribution conductivity = of(band, Cause.CONDUCTIVITY);
        assertThat(thickness.shortest()).isCloseTo(conductivity.shortest(), within(2e-6));
        assertThat(thickness.longest()).isCloseTo(conductivity.longest(), within(2e-6));
        Assurance without = band("m18-flush", exact, allowances);
        assertThat(band.assuredOn()).isLessThan(without.assuredOn() - 0.05e-3);
        assertThat(without.contributions()).extracting(Contribution::cause).doesNotContain(Cause.THICKNESS);
    }

    /** Of two layers each has its own part, and one in which the field ends has none. */
    @Test
    void layersVaryOneByOne() {
        StudyInput study = study("m18-flush");
        List<Layer> layers =
                List.of(new Layer(MATERIALS.get("copper"), 8e-6), new Layer(MATERIALS.get("fe360"), 1.5e-3));
        Body.Sheet body = new Body.Sheet(
                new Target.Outline.Square(study.switchModel().standardSide()), layers, new Texture.Solid());
        Target target = new Target(
                "t", "t", body, 0, List.of(ThicknessTolerance.usual(layers, 0), ThicknessTolerance.usual(layers, 1)));
        List<Contribution> found =
                band("m18-flush", target, Allowances.of(study.switchModel())).contributions().stream()
                        .filter(c -> c.cause() == Cause.THICKNESS)
                        .toList();
        assertThat(found).extracting(Contribution::about).containsExactly("copper", "mild steel Fe 360");
        assertThat(found.get(0).longest() - found.get(0).shortest()).isGreaterThan(0.1e-3);
        assertThat(found.get(1).longest()).isEqualTo(found.get(1).shortest());
    }
}
