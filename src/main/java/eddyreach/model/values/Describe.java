package eddyreach.model.values;

import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Readable names of targets that were given none. */
public final class Describe {

    private Describe() {}

    public static String length(double metres) {
        return Units.text(metres, Dimension.LENGTH);
    }

    public static String layers(List<Layer> layers) {
        return layers.stream()
                .map(l -> l.material().name() + " " + Units.printed(l.thickness(), Dimension.LENGTH))
                .collect(Collectors.joining(" on "));
    }

    /** A sheet; the standard outline needs no saying. */
    public static String sheet(Body.Sheet sheet, double standardSide) {
        return layers(sheet.layers()) + outline(sheet.outline(), standardSide);
    }

    /** Rings of no named shape. */
    public static String rings(Body.Rings body) {
        List<Ring> rings = body.rings();
        String materials =
                rings.stream().map(r -> r.material().name()).distinct().collect(Collectors.joining(" and "));
        boolean slit = rings.stream().anyMatch(Ring::slit);
        return materials + ", " + (slit ? "slit, " : "") + length(2 * body.radius()) + " wide and "
                + length(body.thickness()) + " deep";
    }

    /** The temperature of a part that is not at that of the switch, degrees Celsius. */
    public static String at(double celsius) {
        return String.format(Locale.ROOT, " at %.0f \u00b0C", celsius);
    }

    /** Nothing on the axis. */
    public static String offset(double offset) {
        return offset > 0 ? ", " + length(offset) + " off the axis" : "";
    }

    private static String outline(Target.Outline outline, double standardSide) {
        if (outline instanceof Target.Outline.Square s) {
            return s.side() == standardSide ? "" : ", square " + length(s.side());
        }
        if (outline instanceof Target.Outline.Rectangle r) {
            return ", rectangle " + length(r.width()) + " by " + length(r.height());
        }
        if (outline instanceof Target.Outline.Disc d) {
            return ", disc " + length(d.diameter());
        }
        return ", endless plate";
    }
}
