package eddyreach.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Area;
import org.junit.jupiter.api.Test;

class ThemeTest {

    /** Twice as many as a chart should have, since a study of a zone or of a sweep may name more. */
    private static final int SERIES = 2 * Theme.SERIES_COUNT;

    @Test
    void noTwoSeriesShareColourOrMarker() {
        for (int i = 0; i < SERIES; i++) {
            for (int k = 0; k < i; k++) {
                assertThat(distance(Theme.series(i), Theme.series(k)))
                        .as("colours %d and %d", k, i)
                        .isGreaterThan(40);
                assertThat(same(Theme.marker(i), Theme.marker(k)))
                        .as("markers %d and %d", k, i)
                        .isFalse();
            }
        }
    }

    private static double distance(Color a, Color b) {
        return Math.hypot(Math.hypot(a.getRed() - b.getRed(), a.getGreen() - b.getGreen()), a.getBlue() - b.getBlue());
    }

    private static boolean same(Shape a, Shape b) {
        return new Area(a).equals(new Area(b));
    }
}
