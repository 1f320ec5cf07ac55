package eddyreach.engine.core;

import java.util.concurrent.atomic.AtomicInteger;

/** Is told how far a study has come. Called from several threads. */
@FunctionalInterface
public interface Progress {

    /** Tells nobody. */
    Progress NONE = (stage, done, total) -> {};

    /**
     * @param stage what is being computed, in a few words
     * @param done steps of the stage that are done
     * @param total steps of the stage
     */
    void at(String stage, int done, int total);

    /**
     * Begins a stage whose steps are counted from any thread; more of them than were expected do not show.
     *
     * @param stage what is being computed, in a few words
     * @param total number of steps expected
     * @return to be run after each step
     */
    default Runnable steps(String stage, int total) {
        AtomicInteger done = new AtomicInteger();
        at(stage, 0, total);
        return () -> at(stage, Math.min(total, done.incrementAndGet()), total);
    }

    /**
     * A field problem is about to be solved.
     *
     * @param id identifier of the switch or mount whose field it is
     * @param bytes most memory that it may take
     */
    default void solving(String id, long bytes) {}
}
