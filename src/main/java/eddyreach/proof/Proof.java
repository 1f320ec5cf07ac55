package eddyreach.proof;

import eddyreach.engine.core.Progress;
import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.switching.NoTrimException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The list of check values and their run. */
public final class Proof {

    private final List<Check> checks;

    /**
     * All check values that the program computes.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     * @throws NoTrimException if the switch cannot be trimmed on its standard target
     * @throws NoOscillationException if the tank finds no frequency
     */
    public Proof() {
        this(Stream.of(
                        SpecialFunctionChecks.all(),
                        InductanceChecks.all(),
                        PlateChecks.all(),
                        BodyChecks.all(),
                        MaterialChecks.all(),
                        OscillatorChecks.all(),
                        new ReferenceSwitchChecks().all(),
                        LawChecks.all(),
                        new PlatingChecks().all())
                .flatMap(List::stream)
                .toList());
    }

    Proof(List<Check> checks) {
        this.checks = List.copyOf(checks);
    }

    /** The checks, in the order they are shown. */
    public List<Check> checks() {
        return checks;
    }

    /**
     * Computes all values.
     *
     * @throws SelfCheckException if a computation fails its own checks
     */
    public ProofResult run(Progress progress) {
        List<CheckResult> results = new ArrayList<>();
        for (Check check : checks) {
            progress.at("check values", results.size(), checks.size());
            results.add(check.run());
        }
        return new ProofResult(results);
    }
}
