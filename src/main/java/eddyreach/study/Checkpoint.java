package eddyreach.study;

import java.util.List;

/** Lets a long run stop early and go on later with what it has finished, kept as lines of text. Called from several threads. */
public interface Checkpoint {

    /** A run that starts from nothing, is kept by nobody and goes on to its end. */
    Checkpoint NONE = new Checkpoint() {

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public List<String> kept() {
            return List.of();
        }

        @Override
        public void keep(String line) {}
    };

    /** True from the moment on at which the run is asked to stop; it then ends soon, with what it has. */
    boolean stop();

    /** What an earlier run of the same study has finished, as it was given to {@link #keep}. */
    List<String> kept();

    /** Is given each piece of work when it is finished: one line of text. */
    void keep(String line);
}
