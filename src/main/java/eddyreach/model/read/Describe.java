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
                .map(l -> l.material().name() + " " + Units.printed(l.thickness(), Dimension.LENGTH))
                .collect(Collectors.joining(" on "));
    }

    /** A sheet; the standard outline needs no saying. */
    static String sheet(Body.Sheet sheet, double standardSide) {
        return layers(sheet.layers()) + outline(sheet.outline(), standardSide);
    }

    /** The sizes of a round part. */
    static String round(Round round) {
        List<Section> sections = round.sections();
        if (sections.size() == 2) {
            return IntStream.range(0, 2)
                    .mapToObj(i -> round.names().get(i) + " "
                            + Units.length(2 * sections.get(i).r1()) + " by "
                            + Units.length(
                                    sections.get(i).z1() - sections.get(i).z0()))
                    .collect(Collectors.joining(", "));
        }
        Section s = sections.get(0);
        return Units.length(2 * s.r1()) + (s.r0() > 0 ? " / " + Units.length(2 * s.r0()) : "") + " by "
                + Units.length(s.z1() - s.z0()) + (round.slit() ? ", slit" : "");
    }

    /** Rings of no named shape. */
    static String rings(Body.Rings body) {
        List<Ring> rings = body.rings();
        String materials =
                rings.stream().map(r -> r.material().name()).distinct().collect(Collectors.joining(" and "));
        boolean slit = rings.stream().anyMatch(Ring::slit);
        return materials + ", " + (slit ? "slit, " : "") + Units.length(2 * body.radius()) + " wide and "
                + Units.length(body.thickness()) + " deep";
    }

    /** The temperature of a part that is not at that of the switch, degrees Celsius. */
    static String at(double celsius) {
        return String.format(Locale.ROOT, " at %.0f \u00b0C", celsius);
    }

    /** Nothing on the axis. */
    static String offset(double offset) {
        return offset > 0 ? ", " + Units.length(offset) + " off the axis" : "";
    }

    private static String outline(Target.Outline outline, double standardSide) {
        if (outline instanceof Target.Outline.Square s) {
            return s.side() == standardSide ? "" : ", square " + Units.length(s.side());
        }
        if (outline instanceof Target.Outline.Rectangle r) {
            return ", rectangle " + Units.length(r.width()) + " by " + Units.length(r.height());
        }
        if (outline instanceof Target.Outline.Disc d) {
            return ", disc " + Units.length(d.diameter());
        }
        return ", endless plate";
    }
}
