package eddyreach.kinds.principles;

import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.engine.core.Warning;
import eddyreach.study.Presentation;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The result of a study of the kind {@code principles}.
 *
 * @param input the study
 * @param trimmed the switch without a target, trimmed by its loss
 * @param switches the switches by principle, in the order of {@link Evaluated}
 * @param weight weight of the loss in the weighted sum
 * @param warnings limits that are touched
 */
record PrinciplesResult(
        PrinciplesInput input, TrimmedSwitch trimmed, List<Switch> switches, double weight, List<Warning> warnings)
        implements StudyResult {

    PrinciplesResult {
        switches = List.copyOf(switches);
        warnings = List.copyOf(warnings);
    }

    /** What is evaluated. */
    enum Evaluated {
        LOSS("loss"),
        INDUCTANCE("inductance"),
        WEIGHTED_SUM("weighted sum"),
        FERROUS("ferrous-selective"),
        NON_FERROUS("non-ferrous-selective");

        private final String label;

        Evaluated(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    /**
     * A switch that evaluates one thing.
     *
     * @param evaluated what
     * @param problem why it cannot be trimmed; empty when it can
     * @param on on distances of the targets in their order, m; 0 for those never on
     * @param error their numerical error bars, m
     */
    record Switch(Evaluated evaluated, Optional<String> problem, List<Double> on, List<Double> error) {

        Switch {
            on = List.copyOf(on);
            error = List.copyOf(error);
        }
    }

    /** The switch by a principle. */
    Switch of(Evaluated evaluated) {
        return switches.get(evaluated.ordinal());
    }

    /** Least on distance of the targets to be seen alike, m. */
    double least(Switch s) {
        return alike(s).min().orElseThrow();
    }

    /** Largest on distance of the targets to be seen alike, m. */
    double most(Switch s) {
        return alike(s).max().orElseThrow();
    }

    private DoubleStream alike(Switch s) {
        return IntStream.range(0, input.targets().size())
                .filter(i -> input.alike().contains(input.targets().get(i).id()))
                .mapToDouble(i -> s.on().get(i));
    }

    @Override
    public StudyHeader header() {
        return input.header();
    }

    @Override
    public Presentation presentation() {
        return new PrinciplesPresentation(this);
    }
}
