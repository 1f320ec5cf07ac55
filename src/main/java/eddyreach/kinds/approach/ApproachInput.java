package eddyreach.kinds.approach;

import eddyreach.engine.core.Approach;
import eddyreach.engine.core.Progress;
import eddyreach.engine.core.ResolutionLadder;
import eddyreach.materials.FactorBand;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.study.Checkpoint;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A study of the kinds {@code approach} and {@code materials}: targets that come nearer.
 *
 * @param header what every study says
 * @param targets the targets, at least one, with different ids
 * @param usualFactors the trade's usual band of the correction factor for those targets that are a material's standard target, by
 *     target id
 * @param firstDistance smallest distance of the curves, m
 * @param lastDistance largest distance of the curves, m, above the first
 * @param points number of distances, at least 2
 * @param fieldPictures whether to draw field pictures
 * @param alternatives other switches to try where this one reaches too little; read only if they are tried
 * @param mount where the switch stands; empty for free air alone
 */
public record ApproachInput(
        StudyHeader header,
        List<Target> targets,
        Map<String, FactorBand> usualFactors,
        double firstDistance,
        double lastDistance,
        int points,
        boolean fieldPictures,
        Supplier<List<SwitchModel>> alternatives,
        Optional<Mount> mount)
        implements StudyInput {

    public ApproachInput {
        targets = List.copyOf(targets);
        usualFactors = Map.copyOf(usualFactors);
    }

    /** Without other switches and in free air. */
    public ApproachInput(
            StudyHeader header,
            List<Target> targets,
            Map<String, FactorBand> usualFactors,
            double firstDistance,
            double lastDistance,
            int points,
            boolean fieldPictures) {
        this(
                header,
                targets,
                usualFactors,
                firstDistance,
                lastDistance,
                points,
                fieldPictures,
                List::of,
                Optional.empty());
    }

    /** The same with other switches to try. */
    public ApproachInput withAlternatives(Supplier<List<SwitchModel>> switches) {
        return new ApproachInput(
                header, targets, usualFactors, firstDistance, lastDistance, points, fieldPictures, switches, mount);
    }

    /** The same with the switch in a mount too. */
    public ApproachInput in(Optional<Mount> where) {
        return new ApproachInput(
                header, targets, usualFactors, firstDistance, lastDistance, points, fieldPictures, alternatives, where);
    }

    @Override
    public ApproachInput withoutFieldPictures() {
        return new ApproachInput(
                header, targets, usualFactors, firstDistance, lastDistance, points, false, alternatives, mount);
    }

    @Override
    public ApproachResult run(Progress progress, Checkpoint checkpoint) {
        return ApproachRunner.run(this, progress);
    }

    /**
     * How its targets come nearer.
     *
     * @param fine the step of the ladder that gives the result
     * @param coarse the step before it, which gives the error bar
     */
    public Approach approach(ResolutionLadder.Step fine, ResolutionLadder.Step coarse) {
        return new Approach(setup(), firstDistance, lastDistance, points, fine, coarse);
    }
}
