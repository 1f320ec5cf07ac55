package eddyreach.kinds.temperature;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.assure.ConductanceCurve;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.field.axial.Resolution;
import eddyreach.model.read.Library;
import eddyreach.model.read.ModelFiles;
import eddyreach.model.yaml.InputException;
import eddyreach.studies.StudyReader;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TemperatureStudyTest {

    private static final String STUDY = """
            eddyreach: study
            name: warm
            kind: temperature
            switch: m18-flush
            temperatures: {from: 20 degC, to: 100 degC, points: 2}
            """;

    @TempDir
    private Path folder;

    private TemperatureInput read(String text) {
        return (TemperatureInput) StudyReader.read(ModelFiles.write(folder, "s.yaml", text), new Library(Path.of("")));
    }

    private TemperatureResult run(String text) {
        return (TemperatureResult) read(text).run();
    }

    /** Against the switch whose whole surroundings are warmed at once, another way through the engine. */
    @Test
    void whenAllFollowsItIsTheWarmSwitch() {
        TemperatureResult result = run(STUDY);
        TemperatureCurve curve = result.curves().get(0);
        ResolutionLadder.Step step = ResolutionLadder.trimmed(
                result.model(),
                result.header().standard(),
                Resolution.FINE.withoutFields(),
                List.of(result.header().standard()),
                bytes -> {});
        assertThat(result.input().celsius()).containsExactly(20.0, 23.0, 100.0);
        assertThat(curve.on(2)).isCloseTo(warm(step, result, 100), within(1e-8));
        assertThat(curve.on(1)).isCloseTo(result.model().effectiveDistance(), within(1e-6));
        // the limit of the band lies where the warm switch says so, as closely as it is looked for
        assertThat(curve.coldLimit()).isNaN();
        assertThat(curve.hotLimit()).isBetween(70.0, 100.0);
        assertThat(warm(step, result, curve.hotLimit())).isCloseTo(1.1 * curve.trim(), within(2e-6));
        assertThat(result.presentation().answer())
                .startsWith("Yes from -25 to 70 °C, no beyond: mild steel Fe 360")
                .contains("leaves ±10 % of its 5.00 mm above ");
    }

    private static double warm(ResolutionLadder.Step step, TemperatureResult result, double celsius) {
        return ConductanceCurve.of(step.solved().at(celsius), result.header().standard())
                .on(step.trim());
    }

    /** A threshold that moves alone moves the distance as the conductance over the distance says; undone by the best compensation. */
    @Test
    void thresholdsThatDriftAreUndoneByCompensation() {
        String alone = STUDY + "compensation: 0.1 %/K\n" + "follows: {winding: no, housing: no, target: no}\n";
        TemperatureCurve curve = run(alone).curves().get(0);
        assertThat(curve.steps()).hasSize(1);
        // thresholds that rise ask for a nearer target
        assertThat(curve.on(2)).isLessThan(curve.on(1));
        assertThat(curve.on(0)).isGreaterThan(curve.on(1));
        assertThat(curve.best()).isCloseTo(0, within(1e-8));
        assertThat(curve.remaining()).isCloseTo(0, within(1e-6));
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        String bad = STUDY.replace("from: 20 degC", "from: 40 degC") + """
                compensation: -2 %/K
                capacitor: 5 %
                ferrite: {loss: 3 %/K}
                follows: {coil: yes}
                """;
        InputException e = catchThrowableOfType(InputException.class, () -> read(bad));
        assertThat(ModelFiles.message(e, folder).lines())
                .anyMatch(l -> l.contains("temperatures: from 40 degC to 100 degC leaves out the 23 degC of the trim"))
                .anyMatch(l -> l.contains("compensation: with -2 %/K less than a tenth of the value is left"))
                .anyMatch(l -> l.contains("capacitor: "))
                .anyMatch(l -> l.contains("ferrite.loss: 3 %/K is out of range"))
                .anyMatch(l -> l.contains("follows.coil: unknown key"));
    }
}
