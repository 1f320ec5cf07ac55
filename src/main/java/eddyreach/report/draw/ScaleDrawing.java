package eddyreach.report.draw;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Small drawing helpers shared by the drawings to scale. */
public final class ScaleDrawing {

    private ScaleDrawing() {}

    /** Draws an image stretched over a rectangle. */
    public static void image(Graphics2D g, BufferedImage image, Rectangle2D box) {
        AffineTransform place = AffineTransform.getTranslateInstance(box.getX(), box.getY());
        place.scale(box.getWidth() / image.getWidth(), box.getHeight() / image.getHeight());
        g.drawImage(image, place, null);
    }
}
