package eddyreach.study;

import eddyreach.materials.Material;
import eddyreach.model.Target;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/**
 * A limit of validity that a result touches; it travels with the result.
 *
 * @param kind which limit
 * @param subject the target, part or material concerned
 * @param value the value that caused it, SI
 * @param text what is shown to the user, without a full stop
 */
public record Warning(Kind kind, String subject, double value, String text) {

    /** Assumed permeabilities of a target's materials. */
    static List<Warning> ofMaterials(Target target) {
        List<Warning> list = new ArrayList<>();
        for (Material m : new LinkedHashSet<>(target.body().materials())) {
            if (m.muReal() > 1 && m.conductivity20() > 0) {
                list.add(new Warning(
                        Kind.PERMEABILITY_ASSUMED,
                        target.id(),
                        m.muReal(),
                        String.format(
                                Locale.ROOT,
                                "permeability of %s assumed as %.0f: it differs from piece to piece and falls with"
                                        + " frequency",
                                m.name(),
                                m.muReal())));
            }
        }
        return list;
    }

    /** An error bar above what was asked for, both in m. */
    static Warning errorAbove(String subject, double error, double asked) {
        return new Warning(
                Kind.ERROR_ABOVE_REQUEST,
                subject,
                error,
                String.format(
                        Locale.ROOT,
                        "numerical error %.3f mm at the finest mesh, asked for %.3f mm",
                        error * 1e3,
                        asked * 1e3));
    }

    /** The limits that are watched. */
    public enum Kind {
        PERMEABILITY_ASSUMED,
        SHIELDING,
        SQUARE_AS_DISC,
        RECTANGLE_AS_DISC,
        RECTANGLE_LONG,
        OPEN_AREA_AS_SHEET,
        OPEN_AREA_THICK,
        MESH_AS_SHEET,
        MESH_COARSE,
        SLIT_AS_NARROW,
        WIDE_RINGS_CUT,
        WIDE_AS_ENDLESS,
        ERROR_ABOVE_REQUEST,
        OUTSIDE_USUAL_BAND,
        NOT_ASSESSED
    }
}
