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
}
