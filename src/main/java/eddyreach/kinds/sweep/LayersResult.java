package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.materials.Material;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;

/**
 * On and off distance over the thickness of coatings.
 *
 * @param header what the study said of itself
 * @param input what was asked
 * @param trimmed the switch without a target
 * @param bare where the base switches without a coating
 * @param reference switch-on distance that the others are compared with: that of the bare base, or the effective distance of the switch
 *     where the bare base has none, m
 * @param coatings one curve per coating
 * @param warnings limits that concern the study
 */
public record LayersResult(
        StudyHeader header,
        SweepInput.Layers input,
        TrimmedSwitch trimmed,
        SwitchDistance bare,
        double reference,
        List<Item> coatings,
        List<Warning> warnings)
        implements StudyResult {

    public LayersResult {
        coatings = List.copyOf(coatings);
        warnings = List.copyOf(warnings);
    }

    /** True when distances are compared with that of the bare base. */
    public boolean againstBare() {
        return Double.isFinite(bare.on());
    }

    /**
     * One coating.
     *
     * @param material its material
     * @param curve where the coated base switches over the thickness of the coating, m
     * @param solid where a target of the coating's material alone switches, as thick as the base
     * @param telling the coated base at round thicknesses
     * @param reason what the coating does
     */
    public record Item(
            Material material, SweepCurve curve, SwitchDistance solid, List<MarkedPoint> telling, String reason) {

        public Item {
            telling = List.copyOf(telling);
        }
    }

    @Override
    public Presentation presentation() {
        return new LayersPresentation(this);
    }
}
