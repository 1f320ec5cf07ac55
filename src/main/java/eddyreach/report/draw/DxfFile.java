package eddyreach.report.draw;

import eddyreach.report.words.Labels;
import java.util.Locale;

/**
 * A drawing-exchange file of release 12 (AC1009) while it is written: ASCII, one unit is one millimetre, lines, circles, arrow heads and texts
 * on layers with names.
 */
public final class DxfFile {

    private final StringBuilder out = new StringBuilder();
    private final double unit;
    private double left;
    private double right;
    private double bottom;
    private double top;

    /**
     * @param unit height of texts and length of arrow heads, mm
     */
    public DxfFile(double unit) {
        this.unit = unit;
    }

    /** Largest abscissa so far, mm. */
    public double right() {
        return right;
    }

    /** Least ordinate so far, mm. */
    public double bottom() {
        return bottom;
    }

    /** Largest ordinate so far, mm. */
    public double top() {
        return top;
    }

    /**
     * The whole file.
     *
     * @param layers names of the layers and their colour numbers
     * @param centred the layer whose lines are dashed as those of an axis
     */
    public String text(String[][] layers, String centred) {
        String entities = out.toString();
        out.setLength(0);
        pair(0, "SECTION");
        pair(2, "HEADER");
        variable("$ACADVER", 1, "AC1009");
        point("$EXTMIN", left, bottom);
        point("$EXTMAX", right, top);
        point("$LIMMIN", left, bottom);
        point("$LIMMAX", right, top);
        variable("$LUNITS", 70, "2");
        variable("$LUPREC", 70, "2");
        pair(0, "ENDSEC");
        tables(layers, centred);
        pair(0, "SECTION");
        pair(2, "BLOCKS");
        pair(0, "ENDSEC");
        pair(0, "SECTION");
        pair(2, "ENTITIES");
        out.append(entities);
        pair(0, "ENDSEC");
        pair(0, "EOF");
        return out.toString();
    }

    private void variable(String name, int code, String value) {
        pair(9, name);
        pair(code, value);
    }

    private void point(String name, double x, double y) {
        pair(9, name);
        at(10, x, y);
    }

    private void tables(String[][] layers, String centred) {
        pair(0, "SECTION");
        pair(2, "TABLES");
        table("LTYPE", 2);
        lineType("CONTINUOUS", "solid");
        lineType("CENTER", "long dash, short dash", 12, -2, 2, -2);
        pair(0, "ENDTAB");
        table("LAYER", layers.length);
        for (String[] layer : layers) {
            pair(0, "LAYER");
            pair(2, layer[0]);
            pair(70, "0");
            pair(62, layer[1]);
            pair(6, layer[0].equals(centred) ? "CENTER" : "CONTINUOUS");
        }
        pair(0, "ENDTAB");
        table("STYLE", 1);
        pair(0, "STYLE");
        pair(2, "STANDARD");
        pair(70, "0");
        pair(40, "0");
        pair(41, "1");
        pair(50, "0");
        pair(71, "0");
        pair(42, number(unit));
        pair(3, "txt");
        pair(4, "");
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        pair(0, "TABLE");
        pair(2, name);
        pair(70, String.valueOf(entries));
    }

    private void lineType(String name, String text, double... dashes) {
        pair(0, "LTYPE");
        pair(2, name);
        pair(70, "0");
        pair(3, text);
        pair(72, "65");
        pair(73, String.valueOf(dashes.length));
        double sum = 0;
        for (double d : dashes) {
            sum += Math.abs(d);
        }
        pair(40, number(sum * unit / 4));
        for (double d : dashes) {
            pair(49, number(d * unit / 4));
        }
    }

    public void line(String layer, double x0, double y0, double x1, double y1) {
        entity("LINE", layer);
        at(10, x0, y0);
        at(11, x1, y1);
        extend(x0, y0);
        extend(x1, y1);
    }

    /** A circle about a point of the axis. */
    public void circle(String layer, double y, double radius) {
        entity("CIRCLE", layer);
        at(10, 0, y);
        pair(40, number(radius));
        extend(-radius, y - radius);
        extend(radius, y + radius);
    }

    /** An arrow head with its tip at a point, its shaft leading away in a direction. */
    public void arrow(String layer, double x, double y, double dx, double dy) {
        double w = 0.25 * unit;
        entity("SOLID", layer);
        at(10, x, y);
        at(11, x + dx * unit - dy * w, y + dy * unit + dx * w);
        at(12, x + dx * unit + dy * w, y + dy * unit - dx * w);
        at(13, x + dx * unit + dy * w, y + dy * unit - dx * w);
        extend(x, y);
    }

    public void write(String layer, double x, double y, double angle, int middle, String text) {
        entity("TEXT", layer);
        at(10, x, y);
        pair(40, number(unit));
        pair(1, ascii(text));
        pair(50, number(angle));
        if (middle == 1) {
            pair(72, "1");
            at(11, x, y);
        }
        extend(x, y);
        double turn = Math.toRadians(angle);
        extend(x - unit * Math.sin(turn), y + unit * Math.cos(turn));
    }

    private void entity(String type, String layer) {
        pair(0, type);
        pair(8, layer);
    }

    private void at(int code, double x, double y) {
        pair(code, number(x));
        pair(code + 10, number(y));
    }

    private void extend(double x, double y) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        bottom = Math.min(bottom, y);
        top = Math.max(top, y);
    }

    /** A group: its code on one line, its value on the next. */
    private void pair(int code, String value) {
        out.append(String.format(Locale.ROOT, "%3d", code))
                .append("\r\n")
                .append(value)
                .append("\r\n");
    }

    private static String number(double mm) {
        return Labels.fixed(mm, 6);
    }

    /** The format knows no other characters. */
    public static String ascii(String text) {
        StringBuilder plain = new StringBuilder();
        text.replace("µ", "u")
                .replace("°", " deg ")
                .replace("×", "x")
                .chars()
                .map(c -> c >= ' ' && c <= '~' ? c : '?')
                .forEach(c -> plain.append((char) c));
        return plain.toString();
    }
}
