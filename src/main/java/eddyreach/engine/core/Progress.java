package eddyreach.engine.core;

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
     * A field problem is about to be solved.
     *
     * @param id identifier of the switch or mount whose field it is
     * @param bytes most memory that it may take
     */
    default void solving(String id, long bytes) {}
}
