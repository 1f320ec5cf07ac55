package eddyreach.kinds.neighbour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SolvedSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.field.targets.FacingSwitch;
import eddyreach.kinds.neighbour.NeighbourResult.Place;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.StudyReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NeighbourStudyTest {

    private final Library library = new Library(Path.of(""));

    @TempDir
    private Path folder;

    private NeighbourResult run(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: test
                kind: neighbour
                """ + text);
        return run(new SourceFile.OnDisk(file));
    }

    private NeighbourResult run(SourceFile file) {
        return NeighbourRunner.run((NeighbourInput) StudyReader.read(file, library), Progress.NONE);
    }

    private static double least(double[] values) {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values) {
            least = Math.min(least, Math.abs(v));
        }
        return least;
    }

    /**
     * Common practice asks for 3 to 10 rated distances face to face. Not the metal of the other one but the beats take most of it: another
     * frequency lets it come much nearer.
     */
    @Test
    void beatsAskForMoreRoomThanMetal() {
        NeighbourResult r = run(library.studyFile("m18-neighbours"));
        double sn = r.model().ratedDistance();
        assertThat(r.alike().place()).isEqualTo(Place.WITHIN);
        assertThat(r.alike().spacing()).isBetween(3 * sn, 10 * sn);
        assertThat(r.apart().spacing()).isLessThan(r.alike().spacing() / 2);
        NeighbourResult.Series standard = r.targets().get(0);
        NeighbourResult.Series slug = r.targets().get(1);
        for (NeighbourResult.Series s : r.targets()) {
            assertThat(s.metalTenth().spacing())
                    .isLessThanOrEqualTo(s.metalTwentieth().spacing())
                    .isLessThan(r.apart().spacing());
            assertThat(s.tenth().spacing())
                    .as("a tank at rest takes more than metal")
                    .isBetween(s.metalTenth().spacing(), r.alike().spacing());
            assertThat(Math.abs(s.tank()[s.tank().length - 1]))
                    .as("far out it does nothing")
                    .isLessThan(1e-5);
        }
        int at = 10;
        assertThat(slug.tank()[at])
                .as("a small target hides the neighbour less")
                .isGreaterThan(2 * Math.abs(standard.tank()[at]));
        assertThat(slug.tank()[at]).as("its tank takes loss").isGreaterThan(Math.abs(slug.metal()[at]));
        assertThat(r.latchedAtRest()).isBetween(r.latched(), 3 * sn);
        assertThat(standard.metalTenth().spacing())
                .as("the target needs room before the neighbour")
                .isGreaterThanOrEqualTo(standard.on() + standard.target().thickness());
        for (int i = 1; i < r.couplings().size(); i++) {
            assertThat(r.couplings().get(i).mutual())
                    .isLessThan(r.couplings().get(i - 1).mutual());
            assertThat(r.couplings().get(i).error())
                    .isLessThan(0.02 * r.couplings().get(i).mutual());
        }
    }

    /**
     * The tank tuned to where it takes most loss against tunings one by one: none in the tolerance takes more, and one as much, also where no
     * tuning meets the first one's frequency and an end of the tolerance takes most.
     */
    @Test
    void noTuningWithinTheToleranceTakesMoreLoss() throws IOException {
        Path file = Files.writeString(folder.resolve("s.yaml"), """
                eddyreach: study
                name: test
                kind: neighbour
                switch: m8-flush
                arrangement: face to face
                """);
        NeighbourInput study = (NeighbourInput) StudyReader.read(new SourceFile.OnDisk(file), library);
        SolvedSwitch solved =
                new SolvedSwitch(study.switchModel(), Resolution.COARSE.withoutFields(), List.of(), bytes -> {});
        double tolerance = 0.02;
        for (double detuned : new double[] {1, 1.04, 1 / 1.04}) {
            double capacitance = solved.capacitance() / (detuned * detuned);
            NeighbourSwitch neighbour = new NeighbourSwitch(solved, study.switchModel(), capacitance, false);
            for (double spacing : new double[] {6e-3, 9e-3}) {
                double most = solved.state(
                                (omega, g) -> neighbour.tuned(
                                        omega,
                                        tolerance,
                                        solved.change(neighbour.open(), omega, g),
                                        closed -> solved.change(closed, omega, g)),
                                spacing)
                        .conductance();
                double found = 0;
                for (int i = -200; i <= 200; i++) {
                    double tuning = 1 + tolerance * i / 200;
                    FacingSwitch closed = FacingSwitch.closed(
                            solved.field(),
                            omega -> solved.field()
                                    .impedance(omega)
                                    .add(solved.windingBesideField(omega))
                                    .subtract(Complex.I.multiply(tuning * tuning / (omega * capacitance))));
                    found = Math.max(found, solved.state(closed, spacing).conductance());
                }
                double excess = most - solved.free().conductance();
                assertThat(found - solved.free().conductance()).isCloseTo(excess, within(1e-3 * Math.abs(excess)));
            }
        }
    }

    /** So near that the tanks couple tightly, no frequency may be found: the output then stays on, and that is the answer. */
    @Test
    void nearContact() throws IOException {
        NeighbourResult r = run("""
                switch: m18-flush
                arrangement: face to face
                targets: [{name: slug, material: aluminium, thickness: 1 mm, shape: disc, diameter: 12 mm}]
                spacings: {from: 0.1 mm, to: 6 mm, points: 11}
                """);
        NeighbourResult.Series s = r.targets().get(0);
        assertThat(s.tank()).containsOnly(Double.NaN);
        assertThat(r.latchedAtRest()).isEqualTo(6e-3);
        assertThat(s.tenth().place()).isEqualTo(Place.ABOVE);
        assertThat(s.metalTenth().place()).isEqualTo(Place.WITHIN);
        assertThat(s.metal()[10]).as("its metal alone hardly matters there").isBetween(-0.01, 0.01);
    }

    /** At the limit the depth is what the thresholds allow. */
    @Test
    void limitsLieOnTheCurves() throws IOException {
        NeighbourResult r =
                run("switch: m8-flush\narrangement: face to face\nspacings: {from: 3 mm, to: 15 mm, points: 121}\n");
        double[] d = r.spacing();
        int i = 0;
        while (d[i] < r.alike().spacing()) {
            i++;
        }
        double allowed = r.beats().allowed();
        assertThat(r.couplings().get(i).depth()).isLessThan(allowed);
        assertThat(r.couplings().get(i - 1).depth()).isGreaterThan(0.99 * allowed);
        assertThat(r.couplings().get(i).difference()).as("none is needed").isZero();
        assertThat(r.couplings().get(i - 2).difference()).isPositive();
    }

    /** Side by side less reaches the other one than face to face, and the distances hardly move. */
    @Test
    void sideBySide() throws IOException {
        NeighbourResult r =
                run("switch: m18-non-flush\narrangement: side by side\nspacings: {to: 100 mm, points: 11}\n");
        NeighbourResult facing = run(
                "switch: m18-non-flush\narrangement: face to face\nspacings: {from: 18 mm, to: 100 mm, points: 11}\n");
        assertThat(r.spacing()[0]).isCloseTo(18e-3, within(1e-9));
        for (int i = 0; i < 11; i++) {
            assertThat(r.couplings().get(i).mutual())
                    .isLessThan(facing.couplings().get(i).mutual());
        }
        NeighbourResult.Series s = r.targets().get(0);
        assertThat(s.tenth().spacing()).isLessThan(r.usual());
        assertThat(least(s.error())).isPositive();
        assertThat(s.metalError()[0]).as("an estimate says so").isGreaterThanOrEqualTo(Math.abs(s.metal()[0]));
    }

    /** Another frequency is far beyond beating, and the other switch is as good a neighbour the other way round. */
    @Test
    void differentModels() throws IOException {
        String range = "arrangement: face to face\nspacings: {from: 12 mm, to: 40 mm, points: 11}\n";
        NeighbourResult there = run("switch: m18-flush\nother: m12-non-flush\n" + range);
        NeighbourResult back = run("switch: m12-non-flush\nother: m18-flush\n" + range);
        assertThat(there.alike().place()).isEqualTo(Place.BELOW);
        assertThat(there.couplings().get(0).beat()).isGreaterThan(50e3);
        for (int i = 0; i < 11; i++) {
            double m = there.couplings().get(i).mutual();
            // at the frequency of either one: the tubes' skin depths differ
            assertThat(back.couplings().get(i).mutual()).isCloseTo(m, within(0.03 * m));
        }
    }

    /** A grain that the switch never detects has no distance to shift: the row says so, and the other targets decide. */
    @Test
    void aTargetThatIsNeverDetectedDoesNotDecide() throws IOException {
        NeighbourResult r = run("""
                switch: m12-non-flush
                arrangement: side by side
                spacings: {from: 60 mm, to: 90 mm, points: 11}
                targets:
                  - {name: plate, material: copper}
                  - {name: grain, material: fe360, shape: sphere, diameter: 0.4 mm}
                """);
        NeighbourResult.Series grain = r.targets().get(1);
        assertThat(grain.on()).isNaN();
        assertThat(grain.tenth().place()).isEqualTo(Place.NEVER);
        assertThat(r.targets().get(0).tenth().place()).isNotEqualTo(Place.NEVER);
        assertThat(r.presentation().answer()).startsWith("OK from ").doesNotContain("NaN");
    }
}
