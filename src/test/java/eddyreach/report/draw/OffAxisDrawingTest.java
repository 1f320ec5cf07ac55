package eddyreach.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.PartQuestion;
import eddyreach.model.read.Library;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OffAxisDrawingTest {

    private static final int W = 650;
    private static final int H = 350;

    private static BufferedImage drawn(Map<String, String> words, double distance) {
        ApproachInput study = PartQuestion.read(
                "question", "m18-flush", Optional.empty(), words, List.of(), new Library(Path.of("")));
        BufferedImage image = new BufferedImage(W, H, BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.fillRect(0, 0, W, H);
        new OffAxisDrawing(study.switchModel(), study.targets().get(0), distance)
                .draw(g, new Rectangle2D.Double(0, 0, W, H));
        g.dispose();
        return image;
    }

    /** Columns that hold a reddish pixel: the target. */
    private static double[] reddish(BufferedImage image) {
        int first = W;
        int last = 0;
        for (int x = 0; x < W; x++) {
            for (int y = 0; y < H; y++) {
                int p = image.getRGB(x, y);
                int red = p >> 16 & 255;
                int green = p >> 8 & 255;
                int blue = p & 255;
                // the housing is yellowish: as much green as red
                if (red > green + 22 && blue > 150) {
                    first = Math.min(first, x);
                    last = Math.max(last, x);
                }
            }
        }
        return new double[] {first, last};
    }

    @ParameterizedTest
    @ValueSource(strings = {"sphere", "cylinder"})
    void theTargetIsDrawnToScaleBesideTheAxis(String shape) {
        Map<String, String> words = shape.equals("sphere")
                ? Map.of("shape", shape, "diameter", "9 mm", "material", "fe360")
                : Map.of("shape", shape, "diameter", "9 mm", "length", "9 mm", "material", "fe360");
        double[] near = reddish(drawn(with(words, "12 mm"), 4e-3));
        double[] far = reddish(drawn(with(words, "15 mm"), 4e-3));
        double nearWidth = near[1] - near[0];
        double farWidth = far[1] - far[0];
        assertThat(nearWidth).isGreaterThan(80);
        // from the left end of the picture, 0.6 face diameters beside the axis, to the target's left edge
        assertThat(leftOf(near, nearWidth)).isCloseTo((10.8 + 12 - 4.5) / 9, within(0.06));
        assertThat(leftOf(far, farWidth)).isCloseTo((10.8 + 15 - 4.5) / 9, within(0.06));
    }

    /** Left edge of the target from the left end of the section, in diameters of the target. */
    private static double leftOf(double[] edges, double width) {
        double scale = width / 9;
        double right = edges[1] + 0.1 * 18 * scale;
        // the section stands in the middle of the sheet
        double left = W - right;
        return (edges[0] - left) / width;
    }

    private static Map<String, String> with(Map<String, String> words, String offset) {
        Map<String, String> all = new HashMap<>(words);
        all.put("offset", offset);
        return all;
    }
}
