package eddyreach.kinds.approach;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.report.draw.DrawnTexts;
import eddyreach.report.draw.Fonts;
import eddyreach.report.draw.LabelColumn;
import eddyreach.report.draw.Picture;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.draw.ShadeScale;
import eddyreach.report.words.Labels;
import eddyreach.report.words.Program;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;

class PictureTest {

    private static final ApproachResult RESULT = SampleResult.of();

    /** Drawn once for all tests. */
    private static final Map<String, byte[]> FILES = allFiles();

    static Stream<Picture> pictures() {
        return ApproachPictures.of(RESULT).stream();
    }

    @Test
    void everyKindIsThereOnce() {
        assertThat(pictures().map(Picture::name))
                .containsExactly(
                        "factors",
                        "amplitude",
                        "impedance",
                        "plane",
                        "losses",
                        "field-without-target",
                        "field-steel",
                        "field-foil",
                        "current-steel",
                        "current-stainless",
                        "current-foil");
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void pngHasItsSizeAndShades(Picture picture) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(FILES.get(picture.name() + ".png")));
        assertThat(image.getWidth()).isEqualTo(1400);
        assertThat(image.getHeight()).isEqualTo(900);
        Set<Integer> colours = new HashSet<>();
        for (int rgb : image.getRGB(0, 0, 1400, 900, null, 0, 1400)) {
            colours.add(rgb);
        }
        assertThat(colours).hasSizeGreaterThan(60);
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void labelsAreInsideAndApart(Picture picture) {
        DrawnTexts drawn = DrawnTexts.of(picture);
        assertThat(drawn.texts()).contains(picture.title()).anyMatch(t -> t.endsWith(Program.title()));
        assertThat(drawn.faults()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pictures")
    void svgIsWellFormedWithTextAsShapes(Picture picture) throws Exception {
        byte[] svg = FILES.get(picture.name() + ".svg");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        assertThat(document.getDocumentElement().getLocalName()).isEqualTo("svg");
        assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("700");
        assertThat(document.getElementsByTagName("text").getLength()).isZero();
        assertThat(document.getElementsByTagName("path").getLength()).isGreaterThan(15);
        boolean map = picture.name().startsWith("field") || picture.name().startsWith("current");
        assertThat(document.getElementsByTagName("image").getLength()).isEqualTo(map ? 1 : 0);
        String drawn = new String(svg, StandardCharsets.UTF_8).replaceAll("base64,[^\"]*", "");
        assertThat(drawn.contains("NaN") || drawn.contains("Infinity")).isFalse();
    }

    @Test
    void bytesAreTheSameOnEachRunAndInEachLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            Map<String, byte[]> again = allFiles();
            assertThat(again.keySet()).isEqualTo(FILES.keySet());
            again.forEach((name, bytes) ->
                    assertThat(Arrays.equals(bytes, FILES.get(name))).as(name).isTrue());
        } finally {
            Locale.setDefault(before);
        }
    }

    private static Map<String, byte[]> allFiles() {
        Map<String, byte[]> all = new TreeMap<>();
        for (Picture picture : ApproachPictures.of(SampleResult.of())) {
            for (PictureWriter.Format format : PictureWriter.Format.values()) {
                all.put(picture.name() + format.ending(), PictureWriter.bytes(picture, format));
            }
        }
        return all;
    }

    @Test
    void typefaceHasEveryCharacterOfTheLabels() throws Exception {
        List<String> texts = new ArrayList<>();
        for (Field field : Labels.class.getDeclaredFields()) {
            if (Modifier.isStatic(field.getModifiers()) && field.getType() == String.class) {
                texts.add((String) field.get(null));
            }
        }
        assertThat(texts).hasSizeGreaterThan(10);
        pictures().forEach(p -> {
            texts.add(p.title());
            texts.add(p.subtitle());
        });
        for (String text : texts) {
            assertThat(Fonts.get().regular().canDisplayUpTo(text)).as(text).isEqualTo(-1);
            assertThat(Fonts.get().medium().canDisplayUpTo(text)).as(text).isEqualTo(-1);
        }
        assertThat(Fonts.get().regular().getFamily()).startsWith("Roboto");
    }

    @Test
    void resultWithoutTargetsStillHasItsPictures() {
        ApproachResult r = RESULT;
        ApproachResult bare = new ApproachResult(r.header(), r.trimmed(), List.of(), List.of(), List.of(), List.of());
        assertThat(ApproachPictures.of(bare)).extracting(Picture::name).containsExactly("losses");
        assertThat(PictureWriter.bytes(ApproachPictures.of(bare).get(0), PictureWriter.Format.PNG))
                .isNotEmpty();
    }

    @Test
    void labelsAreKeptApartInOrder() {
        double[] y = LabelColumn.apart(new double[] {1, 2, 2.5, 30, 39}, 5, 0, 40);
        for (int i = 1; i < y.length; i++) {
            assertThat(y[i] - y[i - 1]).isGreaterThanOrEqualTo(5 - 1e-12);
        }
        assertThat(y[0]).isEqualTo(1);
        assertThat(y[4]).isEqualTo(39);
        double[] crowded = LabelColumn.apart(new double[] {5, 5, 5}, 100, 0, 10);
        assertThat(crowded).containsExactly(0, 5, 10);
    }

    @Test
    void shadesGetDarkerWithTheValue() {
        double[] x = {0, 1, 2};
        double[][] f = {{1, 10, 100}, {1, 10, 100}};
        BufferedImage image = new ShadeScale(0, 2, true)
                .image(x, new double[] {0, 1}, f, new double[] {0, 0.5, 1, 1.5, 2}, new double[] {0.5});
        double last = 300;
        for (int i = 0; i < 5; i++) {
            int rgb = image.getRGB(i, 0);
            double grey = 0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
            assertThat(grey).isLessThan(last - 10);
            last = grey;
        }
    }
}
