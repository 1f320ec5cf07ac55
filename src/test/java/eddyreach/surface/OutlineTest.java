package eddyreach.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class OutlineTest {

    private static final double[][] SQUARE = {{0, 0}, {10e-3, 0}, {10e-3, 10e-3}, {0, 10e-3}};

    @Test
    void areas() {
        assertThat(Outline.rectangle(3e-3, 4e-3).area()).isCloseTo(12e-6, within(1e-15));
        assertThat(Outline.round(7, 2e-3).area()).isCloseTo(Math.PI * 4e-6, within(1e-15));
        double[][] hole = {{2e-3, 2e-3}, {4e-3, 2e-3}, {4e-3, 4e-3}, {2e-3, 4e-3}};
        Outline plate = new Outline(SQUARE, List.<double[][]>of(hole));
        assertThat(plate.area()).isCloseTo(96e-6, within(1e-15));
        assertThat(plate.contains(1e-3, 1e-3)).isTrue();
        assertThat(plate.contains(3e-3, 3e-3)).isFalse();
        assertThat(plate.contains(11e-3, 3e-3)).isFalse();
    }

    @Test
    void crossingSides() {
        assertThatThrownBy(() -> Outline.of(new double[][] {{0, 0}, {10e-3, 10e-3}, {10e-3, 0}, {0, 8e-3}}))
                .hasMessageContaining("sides of the outline cross or touch: ")
                .hasMessageContaining("(10.00, 10.00) mm to (0.000, 0.000) mm");
    }

    @Test
    void repeatedCorner() {
        assertThatThrownBy(() -> Outline.of(new double[][] {{0, 0}, {10e-3, 0}, {10e-3, 10e-3}, {10e-3, 0}, {0, 5e-3}}))
                .hasMessage("the outline has the corner (10.00, 0.000) mm twice, as number 2 and 4");
    }

    @Test
    void sidesOnEachOther() {
        assertThatThrownBy(() -> Outline.of(new double[][] {{0, 0}, {10e-3, 0}, {5e-3, 0}, {5e-3, 5e-3}}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void holesOutsideAndOverlapping() {
        double[][] away = {{12e-3, 2e-3}, {14e-3, 2e-3}, {14e-3, 4e-3}};
        assertThatThrownBy(() -> new Outline(SQUARE, List.<double[][]>of(away)))
                .hasMessageContaining("mm lies outside the outline");
        double[][] across = {{8e-3, 2e-3}, {14e-3, 2e-3}, {8e-3, 4e-3}};
        assertThatThrownBy(() -> new Outline(SQUARE, List.<double[][]>of(across)))
                .hasMessageContaining("sides of the outline and a hole cross");
        double[][] one = {{2e-3, 2e-3}, {8e-3, 2e-3}, {8e-3, 8e-3}};
        double[][] within = {{6e-3, 4e-3}, {7e-3, 4e-3}, {7e-3, 5e-3}};
        assertThatThrownBy(() -> new Outline(SQUARE, List.of(one, within))).hasMessageContaining("overlaps the one at");
    }

    @Test
    void tooFewOrNoNumbers() {
        assertThatThrownBy(() -> Outline.of(new double[][] {{0, 0}, {1, 0}}))
                .hasMessageContaining("2 corners, needs at least 3");
        assertThatThrownBy(() -> Outline.of(new double[][] {{0, 0}, {1, 0}, {Double.NaN, 1}}))
                .hasMessageContaining("no pair of finite numbers");
    }
}
