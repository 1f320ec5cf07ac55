package eddyreach.kinds.mount;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;

/**
 * A dimension of a mount as a drawing gives it, in the switch's coordinates.
 *
 * @param kind where it is drawn
 * @param from radius -d/2 of a diameter, 0 of a distance from the axis, or lower height, m
 * @param to radius d/2 of a diameter, distance from the axis, or upper height, m
 * @param named what stands for the number, such as a thread; empty for none
 * @param at height at which a diameter or a distance from the axis is taken, m; 0 for a height
 */
record MountDimension(Kind kind, double from, double to, String named, double at) {

    /** Where a dimension is drawn. */
    enum Kind {
        DIAMETER_ABOVE,
        DIAMETER_BELOW,
        /** From the axis to a straight edge, drawn below. */
        EDGE_BELOW,
        HEIGHT;

        /** True when it is drawn below the section. */
        boolean below() {
            return this == DIAMETER_BELOW || this == EDGE_BELOW;
        }
    }

    /** Millimetres to a hundredth, without trailing zeros, with the sign of a diameter where it is one. */
    String text() {
        if (!named.isEmpty()) {
            return named;
        }
        String number = Labels.fixed((to - from) * Labels.MM, 2).replaceFirst("\\.?0+$", "");
        return kind == Kind.HEIGHT || kind == Kind.EDGE_BELOW ? number : "Ø " + number;
    }

    /** All dimensions of a mount, the widest diameter first and the shortest height first. */
    static List<MountDimension> of(Mount mount, SwitchModel model) {
        List<MountDimension> list = new ArrayList<>();
        double surface = mount.surface();
        mount.wall().ifPresent(w -> {
            for (Mount.Opening o : w.openings()) {
                diameter(list, Kind.DIAMETER_ABOVE, o.front(), surface - o.from());
                if (o.conical()) {
                    diameter(list, Kind.DIAMETER_BELOW, o.back(), surface - o.to());
                }
                height(list, surface - o.to(), surface);
            }
            diameter(list, Kind.DIAMETER_BELOW, w.bore(), surface - w.thickness());
            if (Double.isFinite(w.diameter())) {
                diameter(list, Kind.DIAMETER_BELOW, w.diameter(), surface - w.thickness());
            }
            if (mount.edged()) {
                list.add(new MountDimension(Kind.EDGE_BELOW, 0, w.edge(), "", surface - w.thickness()));
            }
            height(list, surface - w.thickness(), surface);
            height(list, Math.min(0, surface), Math.max(0, surface));
        });
        for (Part p : mount.rings()) {
            Section r = p.section();
            diameter(list, Kind.DIAMETER_BELOW, 2 * r.r1(), r.z0());
            diameter(list, Kind.DIAMETER_BELOW, 2 * r.r0(), r.z0());
            height(list, r.z0(), r.z1());
            // washer and nut lie against the wall; where anything else lies is told from the face
            if (!p.name().equals("washer") && !p.name().equals("nut")) {
                height(list, Math.min(0, r.z1()), Math.max(0, r.z1()));
            }
        }
        mount.cover().ifPresent(c -> {
            height(list, 0, c.distance());
            height(list, c.distance(), c.distance() + c.thickness());
            if (Double.isFinite(c.diameter())) {
                diameter(list, Kind.DIAMETER_ABOVE, c.diameter(), c.distance() + c.thickness());
            }
        });
        mount.background().ifPresent(b -> {
            height(list, 0, b.distance());
            if (Double.isFinite(b.plate().diameter())) {
                diameter(
                        list,
                        Kind.DIAMETER_ABOVE,
                        b.plate().diameter(),
                        b.distance() + b.plate().thickness());
            }
            height(list, b.distance(), b.distance() + b.plate().thickness());
        });
        model.thread()
                .ifPresentOrElse(
                        t -> list.add(new MountDimension(
                                Kind.DIAMETER_BELOW,
                                -t.nominal() / 2,
                                t.nominal() / 2,
                                t.text(),
                                -model.faceDiameter())),
                        () -> diameter(list, Kind.DIAMETER_BELOW, model.bodyDiameter(), -model.faceDiameter()));
        list.sort((a, b) -> a.kind() != b.kind()
                ? a.kind().compareTo(b.kind())
                : Double.compare(a.to() - a.from(), b.to() - b.from()));
        return list.stream().distinct().toList();
    }

    private static void diameter(List<MountDimension> list, Kind kind, double diameter, double at) {
        boolean known = list.stream()
                .anyMatch(d -> d.from() < 0 && d.kind() != Kind.HEIGHT && Math.abs(d.to() - diameter / 2) < 1e-9);
        if (!known && diameter > 0) {
            list.add(new MountDimension(kind, -diameter / 2, diameter / 2, "", at));
        }
    }

    private static void height(List<MountDimension> list, double from, double to) {
        if (to > from) {
            list.add(new MountDimension(Kind.HEIGHT, from, to, "", 0));
        }
    }
}
