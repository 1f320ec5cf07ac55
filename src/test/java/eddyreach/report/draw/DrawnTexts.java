package eddyreach.report.draw;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;

/** Collects the boxes of all texts that a picture draws, as their ink lies on the sheet. */
public final class DrawnTexts {

    /** Boxes that share less than this, in units of the sheet on both axes, only touch. */
    private static final double TOUCH = 0.6;

    private record Text(String text, Shape box) {

        Rectangle2D bounds() {
            return box.getBounds2D();
        }
    }

    private final List<Text> texts = new ArrayList<>();

    private DrawnTexts() {}

    /** The texts of a picture. */
    public static DrawnTexts of(Picture picture) {
        DrawnTexts drawn = new DrawnTexts();
        Fonts.get();
        picture.draw(new Recorder(drawn.texts));
        return drawn;
    }

    public List<String> texts() {
        return texts.stream().map(Text::text).toList();
    }

    /** Boxes of the texts that begin in a certain way. */
    List<Rectangle2D> boxes(String beginning) {
        return texts.stream()
                .filter(t -> t.text().startsWith(beginning))
                .map(Text::bounds)
                .toList();
    }

    /** Texts that reach over the edge of the sheet, and pairs that lie on each other. */
    public List<String> faults() {
        List<String> faults = new ArrayList<>();
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, Picture.WIDTH, Picture.HEIGHT);
        for (int i = 0; i < texts.size(); i++) {
            Text a = texts.get(i);
            if (!sheet.contains(a.bounds())) {
                faults.add("\"" + a.text() + "\" is cut off: " + a.bounds());
            }
            for (Text b : texts.subList(0, i)) {
                if (overlap(a, b)) {
                    faults.add("\"" + a.text() + "\" lies on \"" + b.text() + "\": " + a.bounds() + b.bounds());
                }
            }
        }
        return faults;
    }

    private static boolean overlap(Text a, Text b) {
        if (!a.bounds().intersects(b.bounds())) {
            return false;
        }
        Area common = new Area(a.box());
        common.intersect(new Area(b.box()));
        Rectangle2D bounds = common.getBounds2D();
        return bounds.getWidth() > TOUCH && bounds.getHeight() > TOUCH;
    }

    /** Records texts in place of drawing them. */
    private static final class Recorder extends SVGGraphics2D {

        private final List<Text> texts;
        private final Graphics2D measure;

        Recorder(List<Text> texts) {
            super(SVGGeneratorContext.createDefault(document()), true);
            this.texts = texts;
            measure = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            measure.scale(PictureWriter.SCALE, PictureWriter.SCALE);
            Picture.quality(measure);
        }

        private Recorder(Recorder g) {
            super(g);
            texts = g.texts;
            measure = g.measure;
        }

        private static org.w3c.dom.Document document() {
            try {
                return DocumentBuilderFactory.newDefaultInstance()
                        .newDocumentBuilder()
                        .getDOMImplementation()
                        .createDocument("http://www.w3.org/2000/svg", "svg", null);
            } catch (ParserConfigurationException e) {
                throw new IllegalStateException(e);
            }
        }

        @Override
        public Graphics create() {
            return new Recorder(this);
        }

        /** Shapes are not asked for, and their patterns would need images. */
        @Override
        public void fill(Shape shape) {}

        @Override
        public void draw(Shape shape) {}

        @Override
        public boolean drawImage(Image image, AffineTransform place, ImageObserver observer) {
            return true;
        }

        @Override
        public FontMetrics getFontMetrics(Font font) {
            return measure.getFontMetrics(font);
        }

        @Override
        public void drawString(String text, float x, float y) {
            record(text, getFont().createGlyphVector(measure.getFontRenderContext(), text), x, y);
        }

        @Override
        public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
            record("glyphs", glyphs, x, y);
        }

        private void record(String text, GlyphVector glyphs, float x, float y) {
            AffineTransform place = getTransform();
            place.translate(x, y);
            Shape box = place.createTransformedShape(glyphs.getVisualBounds());
            if (!box.getBounds2D().isEmpty()) {
                texts.add(new Text(text, box));
            }
        }
    }
}
