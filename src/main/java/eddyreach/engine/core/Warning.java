package eddyreach.engine.core;

import java.util.EnumMap;
import java.util.Map;

/**
 * A limit of validity that a result touches; it travels with the result. It holds facts alone: how it is told is said in {@code
 * report.words}.
 *
 * @param kind which limit
 * @param subject the target, part or material concerned
 * @param about what in particular: the name of a material, or why something failed; empty where the kind says it all
 * @param values the numbers that belong to it, SI
 */
public record Warning(Kind kind, String subject, String about, Map<Measure, Double> values) {

    /** The limits that are watched. */
    public enum Kind {
        TRIM_WEAK,
        QUALITY_LOW,
        NOT_OSCILLATING,
        PERMEABILITY_ASSUMED,
        SHIELDING,
        SQUARE_AS_DISC,
        OUTLINE_BESIDE_AXIS,
        RECTANGLE_AS_DISC,
        RECTANGLE_LONG,
        OPEN_AREA_AS_SHEET,
        OPEN_AREA_THICK,
        MESH_AS_SHEET,
        MESH_COARSE,
        MESH_WIRE_THICK,
        SLIT_AS_NARROW,
        WIDE_RINGS_CUT,
        WIDE_AS_ENDLESS,
        OFFSET_WITHOUT_EFFECT,
        BESIDE_UNSEEN,
        ERROR_ABOVE_REQUEST,
        LOST_NEARER,
        OUTSIDE_USUAL_BAND,
        ROUND_MOUNT,
        STRAIGHT_EDGE,
        BEATS_WITHOUT_TARGET,
        BESIDE_ESTIMATED,
        NOT_ASSESSED
    }

    /** What a number of a warning means; its key ends with the SI unit, unless it is a plain number. */
    public enum Measure {
        PERMEABILITY("relative_permeability"),
        ERROR("error_m"),
        ASKED("asked_m"),
        COUNT("count"),
        TOTAL("total"),
        DISTANCE("distance_m"),
        RADIUS("radius_m"),
        SHIFT("shift_m"),
        RESISTANCE("resistance_ohm"),
        ASPECT("aspect"),
        LESS("less"),
        CONDUCTIVITY_RATIO("conductivity_ratio"),
        SKIN_DEPTHS("skin_depths"),
        SHARE("share"),
        CORE_RADII("core_radii"),
        FACTOR("factor"),
        LOW("low"),
        HIGH("high"),
        CORNER("corner_hz"),
        QUALITY("quality"),
        CONDUCTANCE("conductance_s"),
        MOST("most_s");

        private final String key;

        Measure(String key) {
            this.key = key;
        }

        /** Its key in documents. */
        public String key() {
            return key;
        }
    }

    public Warning {
        values = Map.copyOf(values);
    }

    /** Without numbers. */
    public static Warning of(Kind kind, String subject) {
        return new Warning(kind, subject, "", Map.of());
    }

    /** With one more number. */
    public Warning with(Measure measure, double si) {
        Map<Measure, Double> more = new EnumMap<>(Measure.class);
        more.putAll(values);
        more.put(measure, si);
        return new Warning(kind, subject, about, more);
    }

    /** The same about something in particular. */
    public Warning about(String what) {
        return new Warning(kind, subject, what, values);
    }

    /**
     * A number, SI.
     *
     * @throws IllegalArgumentException if it has none of this meaning
     */
    public double value(Measure measure) {
        Double value = values.get(measure);
        if (value == null) {
            throw new IllegalArgumentException(kind + " has no " + measure);
        }
        return value;
    }

    /** True when it has a number of this meaning. */
    public boolean has(Measure measure) {
        return values.containsKey(measure);
    }
}
