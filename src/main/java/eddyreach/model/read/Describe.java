package eddyreach.model.read;

import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Ring;
import eddyreach.model.values.Round;
import eddyreach.model.values.Target;
import eddyreach.units.Dimension;
import eddyreach.units.Units;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Readable names of targets that were given none. */
final class Describe {

    private Describe() {}

    static String layers(List<Layer> layers) {
        return layers.stream()
                .map(l -> l.material().name() + " " + length(l.thickness()))
                .collect(Collectors.joining(" on "));
    }

    /** The layers of a sheet; a single one has a comma, since many names end with a number. */
    static String sheetOf(List<Layer> layers) {
        return layers.size() == 1
                ? layers.get(0).material().name() + ", " + length(layers.get(0).thickness())
                : layers(layers);
    }

    /** A length as it is printed in names. */
    static String length(double metres) {
        return Units.printed(metres, Dimension.LENGTH);
    }

    /** A sheet; the standard outline needs no saying. */
    static String sheet(Body.Sheet sheet, double standardSide) {
        return sheetOf(sheet.layers()) + outline(sheet.outline(), standardSide);
    }

    /** The sizes of a round part. */
    static String round(Round round) {
        List<Section> sections = round.sections();
        if (sections.size() == 2) {
            return IntStream.range(0, 2)
                    .mapToObj(i -> round.names().get(i) + " "
                            + length(2 * sections.get(i).r1()) + " by "
                            + length(sections.get(i).z1() - sections.get(i).z0()))
                    .collect(Collectors.joining(", "));
        }
        Section s = sections.get(0);
        return length(2 * s.r1()) + (s.r0() > 0 ? " / " + length(2 * s.r0()) : "") + " by " + length(s.z1() - s.z0())
                + (round.slit() ? ", slit" : "");
    }

    /** Rings of no named shape. */
    static String rings(Body.Rings body) {
        List<Ring> rings = body.rings();
        String materials =
                rings.stream().map(r -> r.material().name()).distinct().collect(Collectors.joining(" and "));
        boolean slit = rings.stream().anyMatch(Ring::slit);
        return materials + ", " + (slit ? "slit, " : "") + length(2 * body.radius()) + " wide and "
                + length(body.thickness()) + " deep";
    }

    /** The temperature of a part that is not at that of the switch, degrees Celsius. */
    static String at(double celsius) {
        return String.format(Locale.ROOT, " at %.0f \u00b0C", celsius);
    }

    /** Nothing on the axis. */
    static String offset(double offset) {
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
