package eddyreach.model;

import eddyreach.coil.Winding;
import eddyreach.geometry.Part;
import eddyreach.oscillator.ActiveElement;
import eddyreach.switching.OutputFunction;
import eddyreach.switching.StandardQuantities;
import java.util.List;

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
        OutputFunction output) {

    public SwitchModel {
        parts = List.copyOf(parts);
    }

    /** Side of the standard target, m: the larger of the face diameter and 3 s_n (IEC 60947-5-2). */
    public double standardSide() {
        return new StandardQuantities(ratedDistance, faceDiameter).targetSide();
    }
}
