package eddyreach.study;

import java.util.List;

/** Lets a long run stop early and go on later. Called from several threads. */
public interface Checkpoint {

    /** A run that starts from nothing, is kept by nobody and goes on to its end. */
    Checkpoint NONE = new Checkpoint() {

        @Override
        public boolean stop() {
            return false;
        }

        @Override
        public List<RecessCell> kept() {
            return List.of();
        }

        @Override
        public void keep(RecessCell cell) {}
    };

    /** True from the moment on at which the run is asked to stop; it then ends soon, with what it has. */
    boolean stop();

    /** What an earlier run of the same study has computed. */
    List<RecessCell> kept();

    /** Is given each cell when it is computed. */
    void keep(RecessCell cell);
}
