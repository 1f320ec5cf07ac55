package eddyreach.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Approach;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TankState;
import eddyreach.kinds.approach.ApproachInput;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.model.read.Library;
import eddyreach.model.values.Layer;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.SourceFile;
import eddyreach.switching.Trim;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every switch in {@code models} works as a switch, and says in its note where it leaves the trade's usual factors. */
class ShippedSwitchesTest {

    private static final Library LIBRARY = new Library(Path.of(""));
    private static final Pattern OUTSIDE = Pattern.compile("Outside the typical range: ([a-z0-9, -]+)\\.");
    private static final double NICKEL_LOW = 10;

    /** The same as the runner's: what a table does not show. */
    private static final double BAND_TOLERANCE = 0.005;

    @TempDir
    private Path folder;

    static List<String> switches() {
        return LIBRARY.switches();
    }

    @Test
    void thereAreSwitchesOfAllSizesAndBothMountings() {
        assertThat(switches()).hasSizeGreaterThanOrEqualTo(11);
        for (String size : List.of("m8", "m12", "m18", "m30", "block40")) {
            assertThat(switches()).contains(size + "-flush", size + "-non-flush");
        }
        assertThat(switches().stream()
                        .map(id -> LIBRARY.switchModel(id).element().name())
                        .collect(Collectors.toSet()))
                .containsExactlyInAnyOrder("tanh pair", "hard limiter", "clipped stage");
    }

    @ParameterizedTest
    @MethodSource("switches")
    void worksAsASwitch(String id) throws IOException {
        ApproachInput study = study(id);
        SwitchModel model = study.switchModel();
        ResolutionLadder ladder = new ResolutionLadder(study.setup(), study.targets(), Progress.NONE);
        SolvedSwitch fine = ladder.step(ResolutionLadder.FIRST).solved();
        Trim trim = ladder.step(ResolutionLadder.FIRST).trim();
        Approach approach = study.approach(ladder.step(ResolutionLadder.FIRST), ladder.step(0));
        TankState free = fine.free();
        SoftAssertions that = new SoftAssertions();

        that.assertThat(model.element().amplitude(free.conductance()))
                .as("amplitude, V")
                .isBetween(0.2, 10.0);
        that.assertThat(model.element().smallSignalConductance())
                .as("reserve of the oscillator over the on threshold")
                .isGreaterThan(1.2 * trim.on());
        that.assertThat(free.omega() * free.inductance() / free.resistance())
                .as("quality")
                .isBetween(15.0, 150.0);
        that.assertThat(free.conductance())
                .as("releases without a target, with a reserve for a mount")
                .isLessThan(0.95 * trim.off());

        double sr = model.effectiveDistance();
        SwitchDistance standard = approach.of(study.standard()).distance();
        that.assertThat(standard.on()).as("standard target").isCloseTo(sr, within(1e-6 * sr));
        that.assertThat(standard.off()).isCloseTo(sr * (1 + model.differentialTravel()), within(1e-6 * sr));

        Set<String> outside = new TreeSet<>();
        for (Target target : study.targets()) {
            String name = target.id();
            Approach.Outcome found = approach.of(target);
            if (found.distance().error() > study.accuracy()) {
                found = study.approach(ladder.step(ResolutionLadder.FIRST + 1), ladder.step(ResolutionLadder.FIRST))
                        .of(target);
            }
            SwitchDistance distance = found.distance();
            that.assertThat(distance.outcome()).as(name).isEqualTo(SwitchDistance.Outcome.SWITCHES);
            that.assertThat(distance.on()).as(name).isLessThan(distance.off());
            that.assertThat(Math.max(distance.onError(), distance.offError()))
                    .as("numerical error of " + name)
                    .isLessThan(study.accuracy());
            that.assertThat(found.curve().distance(0)).isZero();
            that.assertThat(found.curve().conductance(0))
                    .as(name + " at contact")
                    .isGreaterThan(trim.on());
            if (!inside(distance.on() / sr, study.usualFactors().get(name))) {
                outside.add(name);
            }
        }
        that.assertThat(outside)
                .as("materials outside the usual band, against those the note names")
                .isEqualTo(named(model.note()));
        that.assertAll();
    }

    /** The notes claim that a permeability of 10 instead of the middle of its range brings nickel into its band. */
    private static Target nickelOfLowPermeability(Target nickel) {
        Layer layer = nickel.layers().get(0);
        Material m = layer.material();
        Material low = new Material(
                m.id(), m.name(), m.conductivity20(), m.temperatureCoefficient(), NICKEL_LOW, m.muImag(), m.source());
        return new Target(
                "nickel-low",
                "nickel, low",
                nickel.sheet().orElseThrow().outline(),
                List.of(new Layer(low, layer.thickness())));
    }

    private ApproachInput study(String id) throws IOException {
        Path file = Files.writeString(folder.resolve("derating.yaml"), """
                eddyreach: study
                name: derating
                kind: materials
                switch: %s
                materials: [stainless-430, cast-iron-grey, nickel, stainless-304, brass, aluminium, copper]
                distances:
                  points: 31
                field pictures: no
                """.formatted(id));
        ApproachInput s = (ApproachInput) StudyReader.read(new SourceFile.OnDisk(file), LIBRARY);
        List<Target> targets = new ArrayList<>(s.targets());
        Target nickel = targets.stream()
                .filter(t -> t.id().equals("nickel"))
                .findFirst()
                .orElseThrow();
        Target low = nickelOfLowPermeability(nickel);
        targets.add(low);
        Map<String, FactorBand> bands = new HashMap<>(s.usualFactors());
        bands.put(low.id(), bands.get(nickel.id()));
        return new ApproachInput(
                s.header(), targets, bands, s.firstDistance(), s.lastDistance(), s.points(), s.fieldPictures());
    }

    private static boolean inside(double factor, FactorBand band) {
        return factor >= band.low() - BAND_TOLERANCE && factor <= band.high() + BAND_TOLERANCE;
    }

    private static Set<String> named(String note) {
        Matcher m = OUTSIDE.matcher(note);
        return m.find() ? Set.of(m.group(1).split(", ")) : Set.of();
    }
}
