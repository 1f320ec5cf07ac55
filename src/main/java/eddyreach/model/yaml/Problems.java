package eddyreach.model.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;

/** Collects problems while files are read, so that all of them can be told at once. Not thread-safe. */
public final class Problems {

    private final List<Problem> found = new ArrayList<>();

    /** Adds one. */
    public void add(Problem problem) {
        found.add(problem);
    }

    /** Adds those of another file, say of the switch that a study names. */
    public void addAll(InputException e) {
        found.addAll(e.problems());
    }

    /** True while nothing is wrong. */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /**
     * Ends the reading when anything is wrong.
     *
     * @throws InputException with all problems, files in the order they were met, each from top to bottom
     */
    public void throwIfAny() {
        if (!found.isEmpty()) {
            throw exception();
        }
    }

    public InputException exception() {
        List<String> files = found.stream().map(Problem::file).distinct().toList();
        // a place may be asked for twice
        List<Problem> sorted = new ArrayList<>(new LinkedHashSet<>(found));
        if (files.size() <= 1) {
            sorted.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
        } else {
            sorted.sort(Comparator.comparingInt((Problem p) -> files.indexOf(p.file()))
                    .thenComparingInt(Problem::line)
                    .thenComparingInt(Problem::column));
        }
        return new InputException(sorted);
    }
}
