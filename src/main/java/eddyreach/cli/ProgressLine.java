package eddyreach.cli;

import eddyreach.engine.core.Progress;
import java.io.PrintWriter;
import java.util.function.LongSupplier;

/** One line on the terminal that is overwritten while a study runs, with an estimate of the time left in long stages. */
final class ProgressLine implements Progress {

    private static final int CELLS = 20;

    /** No estimate before this time has passed in a stage, ns. */
    private static final long PATIENCE = 2_000_000_000L;

    /** Nor before this many steps. */
    private static final int STEPS = 3;

    private final PrintWriter err;
    private final String name;
    private final LongSupplier clock;
    private int width;
    private int shown = -1;
    private String stageShown = "";
    private long started;
    private int first;

    ProgressLine(PrintWriter err, String name) {
        this(err, name, System::nanoTime);
    }

    /** The same with another clock, which tells nanoseconds. */
    ProgressLine(PrintWriter err, String name, LongSupplier clock) {
        this.err = err;
        this.name = name;
        this.clock = clock;
    }

    @Override
    public synchronized void at(String stage, int done, int total) {
        boolean same = stage.equals(stageShown);
        if (same && done <= shown) {
            return;
        }
        if (!same) {
            started = clock.getAsLong();
            // what an earlier run has left took no time
            first = done;
        }
        stageShown = stage;
        shown = done;
        int filled = CELLS * done / total;
        write(name + " [" + "#".repeat(filled) + " ".repeat(CELLS - filled) + "] " + stage + " " + done + "/" + total
                + left(done, total));
    }

    private String left(int done, int total) {
        long spent = clock.getAsLong() - started;
        if (spent < PATIENCE || done - first < STEPS || done == total) {
            return "";
        }
        long seconds = Math.round(1e-9 * spent * (total - done) / (done - first));
        return seconds < 60
                ? ", about " + Math.max(1, seconds) + " s left"
                : ", about " + (seconds + 30) / 60 + " min left";
    }

    /** Blanks the line. */
    synchronized void clear() {
        write("");
        err.print('\r');
        err.flush();
    }

    private void write(String text) {
        err.print('\r' + text + " ".repeat(Math.max(0, width - text.length())));
        err.flush();
        width = text.length();
    }
}
