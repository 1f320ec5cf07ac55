package eddyreach.kinds.recess;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.UsualRule;
import eddyreach.materials.Material;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;

/**
 * The result of a study of the kind {@code recess}.
 *
 * @param input what was asked for
 * @param trimmed the switch without a target in free air, where it is trimmed
 * @param diameters diameters of the recess, m
 * @param depths depths of the recess below the surface, m
 * @param free where the target switches in free air
 * @param panels the maps, one per material
 * @param rules the trade's usual rules beside the recess on the drawing
 * @param partial whether the run was stopped before its end
 * @param warnings limits that concern the whole study
 */
public record RecessResult(
        RecessInput input,
        TrimmedSwitch trimmed,
        double[] diameters,
        double[] depths,
        SwitchDistance free,
        List<Panel> panels,
        List<UsualRule> rules,
        boolean partial,
        List<Warning> warnings)
        implements StudyResult {

    public RecessResult {
        panels = List.copyOf(panels);
        rules = List.copyOf(rules);
        warnings = List.copyOf(warnings);
    }

    /**
     * The map of one material.
     *
     * @param material material of the wall
     * @param rows cells by depth, then diameter; empty where a stopped run did not come
     * @param judged the recess on the drawing as a study of the kind {@code mount} finds it; empty where a stopped run did not come
     */
    public record Panel(Material material, List<List<Optional<RecessCell>>> rows, Optional<MountCase> judged) {

        public Panel {
            rows = List.copyOf(rows);
        }

        /** Number of cells that were computed. */
        public long done() {
            return rows.stream()
                    .flatMap(List::stream)
                    .filter(Optional::isPresent)
                    .count();
        }
    }

    /** Number of cells of all maps. */
    public int cells() {
        return panels.size() * diameters.length * depths.length;
    }

    /** Number of cells that were computed. */
    public long done() {
        return panels.stream().mapToLong(Panel::done).sum();
    }

    /** Share of the reserve from which on the output, once on, stays on without a target. */
    public double holds() {
        double air = trimmed.undamped().conductance();
        return (trimmed.offConductance() - air) / (trimmed.onConductance() - air);
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new RecessPresentation(this);
    }
}
