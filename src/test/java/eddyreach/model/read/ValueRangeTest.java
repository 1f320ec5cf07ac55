package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.YamlTree;
import eddyreach.units.Dimension;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ValueRangeTest {

    private static final ValueRange LIMITS = new ValueRange(1e-6, 0.1, 100);
    private static final ValueRange USUAL = new ValueRange(1e-5, 1e-2, 31);

    @TempDir
    private Path folder;

    private ValueRange bind(String keys, Dimension dimension, ValueRange limits, ValueRange usual) {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "r.yaml", "eddyreach: study\n" + keys + "\n"), "study", problems);
        ValueRange range = ValueRange.bind(root, "thickness", dimension, limits, usual);
        root.finish();
        problems.throwIfAny();
        return range;
    }

    private ValueRange lengths(String keys) {
        return bind(keys, Dimension.LENGTH, LIMITS, USUAL);
    }

    @Test
    void whatTheFileLeavesOutIsAsUsual() {
        assertThat(lengths("")).isEqualTo(USUAL);
        assertThat(lengths("thickness: {from: 1 mm}")).isEqualTo(new ValueRange(1e-3, 1e-2, 31));
        assertThat(lengths("thickness: {to: 1 mm}")).isEqualTo(new ValueRange(1e-5, 1e-3, 31));
        assertThat(lengths("thickness: {points: 2}")).isEqualTo(new ValueRange(1e-5, 1e-2, 2));
        assertThat(lengths("thickness: {from: 1 um, to: 100 mm, points: 100}"))
                .isEqualTo(new ValueRange(1e-6, 0.1, 100));
    }

    @Test
    void conductivitiesMayBeGivenAsResistivities() {
        ValueRange limits = new ValueRange(1e3, 1e8, 100);
        assertThat(bind("thickness: {from: 1e-6 ohm m}", Dimension.CONDUCTIVITY, limits, new ValueRange(1e5, 6e7, 9)))
                .isEqualTo(new ValueRange(1e6, 6e7, 9));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{from: 20 mm} | r.yaml:2:19 thickness.from: the range from 20 mm to 10 mm is empty or reversed",
                "{from: 2 mm, to: 2 mm} | r.yaml:2:29 thickness.to: the range from 2 mm to 2 mm is empty or reversed",
                "{to: 101 mm} | 101 mm is out of range, needs 1 um to 100 mm",
                "{points: 1} | got 1, needs a whole number from 2 to 100",
                "{points: 101} | got 101, needs a whole number from 2 to 100",
                "{form: 1 mm} | unknown key, did you mean \"from\"?",
            })
    void whatCannotBe(String group, String message) {
        InputException e = catchThrowableOfType(InputException.class, () -> lengths("thickness: " + group));
        assertThat(ModelFiles.message(e, folder)).contains(message);
    }

    @Test
    void valuesAndTheirPlaces() {
        ValueRange range = new ValueRange(1, 16, 5);
        assertThat(range.even()).containsExactly(new double[] {1, 4.75, 8.5, 12.25, 16}, within(1e-12));
        assertThat(range.logarithmic()).containsExactly(new double[] {1, 2, 4, 8, 16}, within(1e-12));
        assertThat(range.crowded()).containsExactly(new double[] {1, 1.9375, 4.75, 9.4375, 16}, within(1e-12));
        for (int i = 0; i < 5; i++) {
            assertThat(range.logarithmicIndex(range.logarithmic()[i])).isCloseTo(i, within(1e-12));
            assertThat(range.crowdedIndex(range.crowded()[i])).isCloseTo(i, within(1e-12));
        }
        assertThat(new ValueRange(0.1, 0.7, 4).logarithmic()[3]).as("exactly").isEqualTo(0.7);
    }
}
