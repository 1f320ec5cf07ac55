package eddyreach.model.values;

import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A body of one material made of one or two stacked rings, which may be coated on every side. Sizes are those of the finished part,
 * coating included.
 *
 * @param names what the rings are called, from the front to the back
 * @param sections the rings, from the front to the back; of two, the narrower stands on the face of the wider
 * @param slit whether a cut goes through everything
 */
public record Round(List<String> names, List<Section> sections, boolean slit) {

    public static Round cylinder(double radius, double length) {
        return new Round(List.of("core"), List.of(new Section(0, radius, 0, length)), false);
    }

    public static Round hollow(double inner, double outer, double length, boolean slit) {
        return new Round(List.of("core"), List.of(new Section(inner, outer, 0, length)), slit);
    }

    /** A screw with its head, or with pointFirst the end of its shank, towards the switch. */
    public static Round screw(double head, double height, double shank, double length, boolean pointFirst) {
        if (pointFirst) {
            return new Round(
                    List.of("shank", "head"),
                    List.of(new Section(0, shank, 0, length), new Section(0, head, length, length + height)),
                    false);
        }
        return new Round(
                List.of("head", "shank"),
                List.of(new Section(0, head, 0, height), new Section(0, shank, height, height + length)),
                false);
    }

    /** Thickness of a coating that would leave nothing of the part somewhere, m. */
    public double mostCoating() {
        double most = Double.POSITIVE_INFINITY;
        for (Section s : sections) {
            double wall = s.r0() > 0 ? (s.r1() - s.r0()) / 2 : s.r1();
            most = Math.min(most, Math.min(wall, (s.z1() - s.z0()) / 2));
        }
        return most;
    }

    /** The rings of the body, the coating being thinner than {@link #mostCoating()}. */
    public List<Ring> rings(Material material, Optional<Layer> coating) {
        double t = coating.map(Layer::thickness).orElse(0.0);
        List<Ring> rings = new ArrayList<>();
        double end = sections.get(sections.size() - 1).z1();
        for (int i = 0; i < sections.size(); i++) {
            Section s = sections.get(i);
            double inner = s.r0() > 0 ? s.r0() + t : 0;
            rings.add(new Ring(
                    names.get(i),
                    new Section(inner, s.r1() - t, s.z0() + before(i, t), s.z1() - behind(i, t)),
                    material,
                    slit));
        }
        coating.ifPresent(coat -> coat(coat.material(), t, end, rings));
        return rings;
    }

    /** What the coating takes from the front of a ring: nothing where a wider ring lies before it, which is covered itself. */
    private double before(int i, double t) {
        if (i == 0) {
            return t;
        }
        return sections.get(i).r1() > sections.get(i - 1).r1() ? t : -t;
    }

    private double behind(int i, double t) {
        if (i == sections.size() - 1) {
            return t;
        }
        return sections.get(i).r1() > sections.get(i + 1).r1() ? t : -t;
    }

    private void coat(Material m, double t, double end, List<Ring> rings) {
        Section first = sections.get(0);
        Section last = sections.get(sections.size() - 1);
        rings.add(new Ring("coating front", new Section(first.r0(), first.r1(), 0, t), m, slit));
        rings.add(new Ring("coating back", new Section(last.r0(), last.r1(), end - t, end), m, slit));
        for (int i = 0; i < sections.size(); i++) {
            Section s = sections.get(i);
            String where = sections.size() == 1 ? "" : " " + names.get(i);
            double z0 = i == 0 ? t : s.z0();
            double z1 = i == sections.size() - 1 ? end - t : s.z1();
            if (s.r0() > 0) {
                rings.add(new Ring("coating inside", new Section(s.r0(), s.r0() + t, z0, z1), m, slit));
            }
            rings.add(new Ring("coating outside" + where, new Section(s.r1() - t, s.r1(), z0, z1), m, slit));
        }
        if (sections.size() == 2) {
            boolean wideFirst = first.r1() > last.r1();
            Section wide = wideFirst ? first : last;
            Section narrow = wideFirst ? last : first;
            double z0 = wideFirst ? wide.z1() - t : wide.z0();
            rings.add(new Ring("coating shoulder", new Section(narrow.r1() - t, wide.r1() - t, z0, z0 + t), m, slit));
        }
    }
}
