package eddyreach.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;

class PointLabelsTest {

    private static final Rectangle2D AREA = new Rectangle2D.Double(50, 80, 600, 300);

    /** Ends of paths close together, with a line through the place to their right. */
    private static void draw(Graphics2D g) {
        PointLabels labels = new PointLabels(AREA);
        labels.avoid(new Line2D.Double(120, 100, 620, 300));
        for (int i = 0; i < 5; i++) {
            labels.draw(g, "metal number " + i, Theme.medium(10.5), Color.BLACK, 300 + i, 172 + 3 * i);
        }
    }

    @Test
    void namesAreApartAndInside() {
        DrawnTexts drawn = DrawnTexts.of(new Picture("labels", "title", "", "", (g, area) -> draw(g)));
        assertThat(drawn.texts()).filteredOn(t -> t.startsWith("metal")).hasSize(5);
        assertThat(drawn.faults()).isEmpty();
    }

    @Test
    void namesAreOffTheLine() {
        Line2D line = new Line2D.Double(120, 100, 620, 300);
        List<Rectangle2D> boxes = DrawnTexts.of(new Picture("labels", "title", "", "", (g, area) -> draw(g)))
                .boxes("metal");
        assertThat(boxes).hasSize(5).noneMatch(line::intersects);
    }
}
