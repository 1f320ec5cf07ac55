package eddyreach.proof;

import java.util.function.Supplier;

/** Computes a value at its first use, for the checks that share it. */
final class ComputedOnce<T> implements Supplier<T> {

    private final Supplier<T> computation;
    private T value;

    ComputedOnce(Supplier<T> computation) {
        this.computation = computation;
    }

    @Override
    public synchronized T get() {
        if (value == null) {
            value = computation.get();
        }
        return value;
    }
}
