package eddyreach.kinds.sweep;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.materials.Material;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;

/**
 * On and off distance over the thickness of metals.
 *
 * @param header what the study said of itself
 * @param input what was asked
 * @param trimmed the switch without a target
 * @param metals one curve per metal
 * @param warnings limits that concern the study
 */
public record ThicknessResult(
        StudyHeader header,
        SweepInput.Thickness input,
        TrimmedSwitch trimmed,
        List<Metal> metals,
        List<Warning> warnings)
        implements StudyResult {

    public ThicknessResult {
        metals = List.copyOf(metals);
        warnings = List.copyOf(warnings);
    }

    /** Of some of its metals. */
    ThicknessResult of(List<Metal> some) {
        return new ThicknessResult(header, input, trimmed, some, warnings);
    }

    /**
     * One metal.
     *
     * @param material the metal
     * @param curve where it switches over its thickness, m
     * @param skinDepth skin depth at the frequency without a target, m; infinite for an insulator
     * @param optimum thickness at which a thin sheet takes the most loss of the dominant wave, t* = 2 k / (w mu0 sigma), which is k delta^2
     *     unless the metal is magnetic, m; infinite for an insulator
     * @param wavenumber the dominant wavenumber k at the largest switch-on distance, 1/m
     * @param highest the largest switch-on distance; empty when there is none
     * @param inside whether that lies inside the range of thicknesses and not at an end
     * @param marked points worth naming, by thickness
     */
    public record Metal(
            Material material,
            SweepCurve curve,
            double skinDepth,
            double optimum,
            double wavenumber,
            Optional<SweepPoint> highest,
            boolean inside,
            List<MarkedPoint> marked) {

        public Metal {
            marked = List.copyOf(marked);
        }

        /** The thickness beyond the largest distance from which on the distance is level; empty when it still changes at the end. */
        public Optional<SweepPoint> level() {
            return curve.levelFrom(SweepCurve.LEVEL)
                    .filter(p -> p.value() < curve.last().value())
                    .filter(p -> highest.isPresent() && highest.get().value() < p.value());
        }

        /** The lowest distance between the largest one and thick metal, where it is lower than that of thick metal. */
        public Optional<SweepPoint> dip() {
            return highest.flatMap(top -> curve.dipAfter(top.value(), SweepCurve.LEVEL));
        }
    }

    @Override
    public Presentation presentation() {
        return new ThicknessPresentation(this);
    }
}
