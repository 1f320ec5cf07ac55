package eddyreach.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class AxisTest {

    private static final Axis AXIS = new Axis(new double[] {0, 1, 3, 3.5}, new int[] {2, 1, 4});

    @Test
    void functionsAreNumberedAlongTheAxis() {
        assertThat(AXIS.elements()).isEqualTo(3);
        assertThat(AXIS.functions()).isEqualTo(8);
        int[][] expected = {{0, 2, 1}, {2, 3}, {3, 7, 4, 5, 6}};
        for (int e = 0; e < 3; e++) {
            assertThat(AXIS.degree(e)).isEqualTo(expected[e].length - 1);
            for (int k = 0; k < expected[e].length; k++) {
                assertThat(AXIS.function(e, k)).isEqualTo(expected[e][k]);
            }
        }
        assertThat(AXIS.vertex(0)).isEqualTo(0);
        assertThat(AXIS.vertex(2)).isEqualTo(3);
        assertThat(AXIS.vertex(3)).isEqualTo(7);
    }

    @Test
    void lengthsAndMiddles() {
        assertThat(AXIS.end(3)).isEqualTo(3.5);
        assertThat(AXIS.length(1)).isEqualTo(2);
        assertThat(AXIS.middle(1)).isEqualTo(2);
    }

    @Test
    void findTakesTheLowerElementAtAVertex() {
        assertThat(AXIS.find(0)).isEqualTo(0);
        assertThat(AXIS.find(0.5)).isEqualTo(0);
        assertThat(AXIS.find(1)).isEqualTo(0);
        assertThat(AXIS.find(Math.nextUp(1.0))).isEqualTo(1);
        assertThat(AXIS.find(3)).isEqualTo(1);
        assertThat(AXIS.find(3.5)).isEqualTo(2);
        assertThat(AXIS.find(-1e-300)).isEqualTo(-1);
        assertThat(AXIS.find(3.6)).isEqualTo(-1);
        assertThat(AXIS.find(Double.NaN)).isEqualTo(-1);
    }

    @Test
    void keepsItsOwnCopies() {
        double[] ends = {0, 1};
        int[] degree = {1};
        Axis axis = new Axis(ends, degree);
        ends[1] = 9;
        degree[0] = 9;
        assertThat(axis.end(1)).isEqualTo(1);
        assertThat(axis.degree(0)).isEqualTo(1);
    }

    @Test
    void refusesWhatIsNoAxis() {
        assertThatThrownBy(() -> new Axis(new double[] {0}, new int[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Axis(new double[] {0, 1, 2}, new int[] {1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("3 ends for 1 elements");
        assertThatThrownBy(() -> new Axis(new double[] {0, 1, 1}, new int[] {1, 1}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("element 1 from 1.0 to 1.0");
        assertThatThrownBy(() -> new Axis(new double[] {0, Double.NaN}, new int[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Axis(new double[] {0, 1}, new int[] {0}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
