package eddyreach.switching;

import java.util.List;
import java.util.Optional;

/** What a switch does while a target comes from far to contact and leaves again. */
public sealed interface SwitchPoints {

    /** Changes of the output while the target approaches, the farthest first. */
    List<Crossing> approach();

    /** Changes of the output while the target then leaves from contact, the nearest first. */
    List<Crossing> departure();

    /** Where the approaching target is first recognised, if it is within the range examined. */
    default Optional<Crossing> on() {
        return approach().stream().filter(Crossing::turnsOn).findFirst();
    }

    /** Where the leaving target is finally lost, if it is within the range examined. */
    default Optional<Crossing> off() {
        List<Crossing> all = departure();
        return all.isEmpty() || all.get(all.size() - 1).turnsOn()
                ? Optional.empty()
                : Optional.of(all.get(all.size() - 1));
    }

    /** Where the approaching target is lost again although it comes nearer; empty when it is recognised all the way to contact. */
    default Optional<Crossing> lostNearer() {
        return approach().stream()
                .dropWhile(c -> !c.turnsOn())
                .filter(c -> !c.turnsOn())
                .findFirst();
    }

    /**
     * The target is recognised and lost again.
     *
     * @param approach changes on the way in; the first is the on distance, more than one when the output drops near
     *     the face
     * @param departure changes on the way out; the last is the off distance
     */
    record Switches(List<Crossing> approach, List<Crossing> departure) implements SwitchPoints {
        public Switches {
            approach = List.copyOf(approach);
            departure = List.copyOf(departure);
        }

        /** On distance, m. */
        public double onDistance() {
            return approach.get(0).distance();
        }

        /** Off distance, m. */
        public double offDistance() {
            return departure.get(departure.size() - 1).distance();
        }

        /** Differential travel: off distance less on distance, m. */
        public double differentialTravel() {
            return offDistance() - onDistance();
        }
    }

    /**
     * The conductance stays below the on threshold at every distance.
     *
     * @param largestConductance largest conductance met, S
     * @param distance where, m
     */
    record NeverSwitches(double largestConductance, double distance) implements SwitchPoints {
        @Override
        public List<Crossing> approach() {
            return List.of();
        }

        @Override
        public List<Crossing> departure() {
            return List.of();
        }
    }

    /**
     * Latched: the output is on when the target has gone, because the conductance without any target lies at or above
     * the off threshold.
     *
     * @param onWithoutTarget true when it even lies at or above the on threshold: the output is on before any target
     *     comes; the crossings then tell whether a target turns it off
     * @param freeConductance conductance without a target, S
     * @param approach changes on the way in
     * @param departure changes on the way out
     */
    record NeverReleases(
            boolean onWithoutTarget, double freeConductance, List<Crossing> approach, List<Crossing> departure)
            implements SwitchPoints {
        public NeverReleases {
            approach = List.copyOf(approach);
            departure = List.copyOf(departure);
        }
    }

    /**
     * The switch acts, but the on or the off distance lies beyond the range examined.
     *
     * @param maxDistance end of the range, m
     * @param approach changes on the way in, within the range
     * @param departure changes on the way out, within the range
     */
    record OutOfRange(double maxDistance, List<Crossing> approach, List<Crossing> departure) implements SwitchPoints {
        public OutOfRange {
            approach = List.copyOf(approach);
            departure = List.copyOf(departure);
        }
    }
}
