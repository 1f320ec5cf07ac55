package eddyreach.kinds.sweep;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.materials.Material;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;

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

    /** Of some of its coatings. */
    LayersResult of(List<Item> some) {
        return new LayersResult(header, input, trimmed, bare, reference, some, warnings);
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
     * @param marked the coated base at round thicknesses
     * @param optimum thickness at which the coating alone takes the most loss of the dominant wave, m; infinite for an insulator
     * @param skinDepth its skin depth at the frequency without a target, m; infinite for an insulator
     */
    public record Item(
            Material material,
            SweepCurve curve,
            SwitchDistance solid,
            List<MarkedPoint> marked,
            double optimum,
            double skinDepth) {

        public Item {
            marked = List.copyOf(marked);
        }

        /** The largest distance, where it is clearly above a reference, m. */
        Optional<SweepPoint> raised(double reference) {
            return curve.highest().filter(p -> p.on() > (1 + SweepCurve.LEVEL) * reference);
        }

        /** The thickness, above that of the largest distance, at which the distance is first clearly below a reference, m, or the target lost. */
        Optional<SweepPoint> lowered(double reference) {
            double after = curve.highest().map(SweepPoint::value).orElse(0.0);
            return curve.points().stream()
                    .filter(p -> p.value() > after && (!p.seen() || p.on() < (1 - SweepCurve.LEVEL) * reference))
                    .findFirst();
        }

        /** True when each thickness has a switch-on distance; without it nothing can be said of the whole range. */
        boolean everywhereOn() {
            return curve.points().stream().allMatch(p -> Double.isFinite(p.on()));
        }
    }

    @Override
    public Presentation presentation() {
        return new LayersPresentation(this);
    }
}
