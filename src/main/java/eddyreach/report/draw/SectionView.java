package eddyreach.report.draw;

import eddyreach.geometry.Section;
import java.awt.geom.Rectangle2D;

/**
 * The map from metres to the sheet, to equal scale.
 *
 * @param box what is shown
 * @param axisX abscissa of the axis on the sheet
 * @param faceY ordinate of the active face on the sheet
 * @param scale units of the sheet per metre
 */
public record SectionView(Rectangle2D box, double axisX, double faceY, double scale) {

    public double x(double r) {
        return axisX + r * scale;
    }

    public double y(double z) {
        return faceY - z * scale;
    }

    /** A section on one side of the axis, cut off at the box; empty when outside. */
    Rectangle2D rectangle(Section s, int side) {
        double x0 = side > 0 ? x(s.r0()) : x(-s.r1());
        Rectangle2D whole = new Rectangle2D.Double(x0, y(s.z1()), (s.r1() - s.r0()) * scale, (s.z1() - s.z0()) * scale);
        return whole.createIntersection(box);
    }
}
