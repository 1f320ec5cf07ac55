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
 * On and off distance over the size of targets.
 *
 * @param header what the study said of itself
 * @param input what was asked
 * @param trimmed the switch without a target
 * @param reference size of a target as large as the standard target: its side, or the diameter of the disc of equal area, m
 * @param materials one curve per material
 * @param warnings limits that concern the study
 */
public record SizeResult(
        StudyHeader header,
        SweepInput.Size input,
        TrimmedSwitch trimmed,
        double reference,
        List<Item> materials,
        List<Warning> warnings)
        implements StudyResult {

    public SizeResult {
        materials = List.copyOf(materials);
        warnings = List.copyOf(warnings);
    }

    /** Of some of its materials. */
    SizeResult of(List<Item> some) {
        return new SizeResult(header, input, trimmed, reference, some, warnings);
    }

    /**
     * One material.
     *
     * @param material the material
     * @param curve where it switches over its size, m
     * @param standard where it switches at the size of the standard target
     * @param smallest smallest size that is seen at contact, to 1 %, m; the smallest of the range when even that is seen, NaN when none is
     * @param marked points worth naming, by size
     */
    public record Item(
            Material material, SweepCurve curve, SwitchDistance standard, double smallest, List<MarkedPoint> marked) {

        public Item {
            marked = List.copyOf(marked);
        }

        /** The size from which on a larger target changes the distance by less than {@link SweepCurve#LEVEL}; empty when it still does. */
        public Optional<SweepPoint> level() {
            return curve.levelFrom(SweepCurve.LEVEL)
                    .filter(p -> p.value() < curve.last().value());
        }

        /** The largest distance, where it is clearly above that of the largest target. */
        public Optional<SweepPoint> peak() {
            return curve.highest()
                    .filter(p -> p.on() > (1 + SweepCurve.LEVEL) * curve.last().on()
                            && p.value() < curve.last().value());
        }
    }

    @Override
    public Presentation presentation() {
        return new SizePresentation(this);
    }
}
