package eddyreach.kinds.mount;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.model.values.Mount;
import eddyreach.model.values.Mounting;
import eddyreach.model.values.SwitchModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The trade's usual rules for mounts, all of them common practice, held against what was computed. */
final class UsualRules {

    /** Clear diameter around a non-flush switch, in diameters of its face. */
    private static final double CLEAR_DIAMETER = 3;

    /** Clear length behind the face of a non-flush switch, in rated distances. */
    private static final double CLEAR_HEIGHT = 2;

    /** Least width of the opening over a flush switch that is sunk, in diameters of its face. */
    private static final double OPENING = 2;

    /** Free zone in front, in rated distances. */
    private static final double CLEAR_FRONT = 3;

    private UsualRules() {}

    /** The rules that concern the mounts. */
    static List<UsualRule> of(SwitchModel model, List<MountCase> cases) {
        List<UsualRule> rules = new ArrayList<>();
        for (MountCase c : cases) {
            Mount m = c.mount();
            if (m.wall().isPresent() || !m.rings().isEmpty()) {
                rules.add(model.mounting() == Mounting.FLUSH ? flush(model, c) : around(model, c));
            }
            if (m.cover().isPresent() || m.background().isPresent()) {
                rules.add(front(model, c));
            }
        }
        return rules;
    }

    /** Clear diameter around a non-flush switch, m. */
    static double clearDiameter(SwitchModel model) {
        return CLEAR_DIAMETER * model.faceDiameter();
    }

    /** Clear length behind the face of a non-flush switch, m. */
    static double clearHeight(SwitchModel model) {
        return CLEAR_HEIGHT * model.ratedDistance();
    }

    private static Stream<Section> metal(MountCase c) {
        return c.parts().stream().filter(p -> p.material().hasEffect()).map(Part::section);
    }

    private static UsualRule flush(SwitchModel model, MountCase c) {
        double opening = OPENING * model.faceDiameter();
        boolean kept = metal(c).allMatch(s -> s.z1() <= 0 || 2 * s.r0() >= opening);
        return rule(c, UsualRule.Kind.FLUSH_LEVEL, opening, 0, kept);
    }

    private static UsualRule around(SwitchModel model, MountCase c) {
        double diameter = clearDiameter(model);
        double height = clearHeight(model);
        boolean kept = metal(c).allMatch(s -> s.z1() <= -height || 2 * s.r0() >= diameter);
        return rule(c, UsualRule.Kind.CLEAR_AROUND, diameter, height, kept);
    }

    private static UsualRule front(SwitchModel model, MountCase c) {
        double zone = CLEAR_FRONT * model.ratedDistance();
        double radius = model.faceDiameter() / 2;
        boolean kept = metal(c).allMatch(s -> s.z1() <= 0 || s.z0() >= zone || s.r0() >= radius)
                && c.mount().background().map(Mount.Standing::distance).orElse(zone) >= zone;
        return rule(c, UsualRule.Kind.CLEAR_IN_FRONT, 0, zone, kept);
    }

    private static UsualRule rule(MountCase c, UsualRule.Kind kind, double width, double length, boolean kept) {
        return new UsualRule(
                c.mount().id(), kind, width, length, kept, c.judgement().grade());
    }
}
