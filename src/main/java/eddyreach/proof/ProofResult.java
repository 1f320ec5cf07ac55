package eddyreach.proof;

import java.util.List;

/**
 * All checks with their computed values.
 *
 * @param results in the order of the list
 */
public record ProofResult(List<CheckResult> results) {

    public ProofResult {
        results = List.copyOf(results);
    }

    /** Those that failed. */
    public List<CheckResult> failures() {
        return results.stream().filter(r -> !r.passed()).toList();
    }

    /** True when none failed. */
    public boolean passed() {
        return failures().isEmpty();
    }
}
