package eddyreach.model.values;

import eddyreach.coil.Winding;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.oscillator.ActiveElement;
import eddyreach.switching.OutputFunction;
import eddyreach.switching.StandardQuantities;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A switch: body, coil, oscillator and output, in SI units; the active face is the plane z = 0, the body lies in
 * z below 0.
 *
 * @param id name of its file without the ending
 * @param name readable name
 * @param note what is typical and what is assumed, as the file says
 * @param mounting flush or non-flush
 * @param ratedDistance rated operating distance s_n, m
 * @param effectiveDistance effective operating distance s_r to which the switch is trimmed, m (s_n unless given)
 * @param faceDiameter diameter of the active face, m
 * @param frequency oscillation frequency without a target in free air, Hz
 * @param winding the coil
 * @param parts core and housing (roles CORE and HOUSING), without the winding
 * @param element active element of the oscillator
 * @param differentialTravel differential travel H as a fraction of s_r
 * @param output normally open or normally closed
 * @param thread thread of the body, which the housing takes as a smooth tube of its pitch diameter; empty for a smooth body
 */
public record SwitchModel(
        String id,
        String name,
        String note,
        Mounting mounting,
        double ratedDistance,
        double effectiveDistance,
        double faceDiameter,
        double frequency,
        Winding winding,
        List<Part> parts,
        ActiveElement element,
        double differentialTravel,
        OutputFunction output,
        Optional<MetricThread> thread) {

    public SwitchModel {
        parts = List.copyOf(parts);
    }

    /** The same with other parts and another winding. */
    public SwitchModel with(List<Part> otherParts, Winding otherWinding) {
        return new SwitchModel(
                id,
                name,
                note,
                mounting,
                ratedDistance,
                effectiveDistance,
                faceDiameter,
                frequency,
                otherWinding,
                otherParts,
                element,
                differentialTravel,
                output,
                thread);
    }

    /** Diameter of the body, m: that of the housing, or of the active face when there is none. */
    public double bodyDiameter() {
        return parts.stream().anyMatch(p -> p.role() == Role.HOUSING)
                ? 2 * parts.stream().mapToDouble(p -> p.section().r1()).max().orElseThrow()
                : faceDiameter;
    }

    /** Least diameter of a smooth hole that the body passes, m: the clearance hole of its thread, or the body's own diameter. */
    public double clearanceHole() {
        return Math.max(bodyDiameter(), thread.map(MetricThread::clearance).orElse(0.0));
    }

    /** Height of the rear end of the housing, m, negative; empty without a housing, whose length nobody knows. */
    public OptionalDouble rearEnd() {
        return parts.stream()
                .filter(p -> p.role() == Role.HOUSING)
                .mapToDouble(p -> p.section().z0())
                .min();
    }

    /** Radius of the core, or of the winding when there is none: the length that sets the scale of the field, m. */
    public double coreRadius() {
        return parts.stream()
                .filter(p -> p.role() == Role.CORE)
                .mapToDouble(p -> p.section().r1())
                .max()
                .orElse(winding.section().r1());
    }

    /** Side of the standard target, m: the larger of the face diameter and 3 s_n (IEC 60947-5-2). */
    public double standardSide() {
        return new StandardQuantities(ratedDistance, faceDiameter).targetSide();
    }
}
