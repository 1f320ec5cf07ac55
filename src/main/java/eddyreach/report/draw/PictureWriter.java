package eddyreach.report.draw;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.awt.image.RenderedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.ImageHandlerBase64Encoder;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Document;

/** Turns a picture into the bytes of a file. The same picture gives the same bytes on each run. */
public final class PictureWriter {

    /** Pixels of the PNG per unit of the sheet. */
    public static final int SCALE = 2;

    /** Decimals of coordinates in the SVG: a thousandth of a unit is far below what any output resolves. */
    private static final int DECIMALS = 3;

    private PictureWriter() {}

    /** The kinds of file. */
    public enum Format {
        PNG,
        SVG;

        /** Ending of the file name, with the dot. */
        public String ending() {
            return this == PNG ? ".png" : ".svg";
        }
    }

    /** The picture in one of the formats. */
    public static byte[] bytes(Picture picture, Format format) {
        return format == Format.PNG ? png(picture) : svg(picture);
    }

    private static byte[] png(Picture picture) {
        int width = Picture.WIDTH * SCALE;
        int height = Picture.HEIGHT * SCALE;
        Fonts.get();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(SCALE, SCALE);
        picture.draw(g);
        g.dispose();
        return Png.encode(((DataBufferInt) image.getRaster().getDataBuffer()).getData(), width, height);
    }

    private static byte[] svg(Picture picture) {
        Fonts.get();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setImageHandler(new EmbeddedPng());
        context.setPrecision(DECIMALS);
        SVGGraphics2D g = new SvgGraphics(context);
        g.setSVGCanvasSize(new Dimension(Picture.WIDTH, Picture.HEIGHT));
        picture.draw(g);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        try (Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            g.stream(writer, true);
        } catch (SVGGraphics2DIOException e) {
            throw new IllegalStateException("cannot write " + picture.name() + " as SVG", e);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + picture.name() + " as SVG", e);
        }
        return out.toByteArray();
    }

    /** Measures text as the raster does, so that both formats are laid out alike. */
    private static final class SvgGraphics extends SVGGraphics2D {

        private final Graphics2D measure;

        SvgGraphics(SVGGeneratorContext context) {
            super(context, true);
            measure = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
            measure.scale(SCALE, SCALE);
            Picture.quality(measure);
        }

        private SvgGraphics(SvgGraphics g) {
            super(g);
            measure = g.measure;
        }

        @Override
        public Graphics create() {
            return new SvgGraphics(this);
        }

        @Override
        public FontMetrics getFontMetrics(Font font) {
            return measure.getFontMetrics(font);
        }
    }

    /** Embeds rasters through our own encoder: the library's needs a codec that is not carried along. */
    private static final class EmbeddedPng extends ImageHandlerBase64Encoder {

        @Override
        public void encodeImage(RenderedImage image, OutputStream out) throws SVGGraphics2DIOException {
            int w = image.getWidth();
            int h = image.getHeight();
            BufferedImage rgb = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = rgb.createGraphics();
            g.drawRenderedImage(image, new AffineTransform());
            g.dispose();
            try {
                out.write(Png.encode(((DataBufferInt) rgb.getRaster().getDataBuffer()).getData(), w, h));
            } catch (IOException e) {
                throw new SVGGraphics2DIOException("cannot embed an image", e);
            }
        }
    }

    private static Document document() {
        try {
            DOMImplementation dom = DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation();
            return dom.createDocument("http://www.w3.org/2000/svg", "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the platform's XML document is not available", e);
        }
    }
}
