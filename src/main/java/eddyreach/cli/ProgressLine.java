package eddyreach.cli;

import eddyreach.engine.core.Progress;
import java.io.PrintWriter;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;

/**
 * How far a study is. On a terminal one line that is overwritten, never wider than the terminal; elsewhere a plain line at most every ten
 * seconds. Long stages have an estimate of their own time left, since no stage knows those that follow.
 */
final class ProgressLine implements Progress, AutoCloseable {

    private static final int CELLS = 20;
    private static final double MEGABYTE = 1e6;

    /** No estimate before this time has passed in a stage, ns. */
    private static final long PATIENCE = 2_000_000_000L;

    /** Nor before this many steps. */
    private static final int STEPS = 3;

    /** Time between plain lines, ns. */
    private static final long PLAIN = TimeUnit.SECONDS.toNanos(10);

    private final PrintWriter err;
    private final String name;
    private final boolean overwritten;
    private final int columns;
    private final LongSupplier clock;
    private long told;
    private int width;
    private int shown = -1;
    private String stageShown = "";
    private long started;
    private int first;

    /**
     * Progress of one study.
     *
     * @param columns columns of a terminal that can overwrite a line; 0 where plain lines are written
     * @param clock tells nanoseconds
     */
    ProgressLine(PrintWriter err, String name, int columns, LongSupplier clock) {
        this.err = err;
        this.name = name;
        overwritten = columns > 0;
        this.columns = columns;
        this.clock = clock;
        told = clock.getAsLong();
    }

    static ProgressLine on(Terminal terminal, String name) {
        return new ProgressLine(terminal.err(), name, terminal.interactive() ? terminal.width() : 0, System::nanoTime);
    }

    @Override
    public void solving(String id, long bytes) {
        at("field of " + id + ", at most " + Math.round(bytes / MEGABYTE) + " MB", 0, 1);
    }

    @Override
    public synchronized void at(String stage, int done, int total) {
        boolean same = stage.equals(stageShown);
        if (same && done <= shown) {
            return;
        }
        long now = clock.getAsLong();
        if (!same) {
            started = now;
            // what an earlier run has left took no time
            first = done;
        }
        stageShown = stage;
        shown = done;
        String where = stage + " " + done + "/" + total + left(now, done, total);
        if (overwritten) {
            int filled = CELLS * done / total;
            write(name + " [" + "#".repeat(filled) + " ".repeat(CELLS - filled) + "] " + where);
        } else if (now - told >= PLAIN) {
            told = now;
            err.println(name + ": " + where);
            err.flush();
        }
    }

    private String left(long now, int done, int total) {
        long spent = now - started;
        if (spent < PATIENCE || done - first < STEPS || done == total) {
            return "";
        }
        long seconds = Math.round(1e-9 * spent * (total - done) / (done - first));
        return ", about "
                + (seconds < 60 ? Math.max(1, seconds) + " s" : (seconds + 30) / 60 + " min")
                + " left of this stage";
    }

    /** Blanks the line. */
    @Override
    public synchronized void close() {
        if (overwritten) {
            write("");
            err.print('\r');
            err.flush();
        }
    }

    /** The last column stays empty, since some terminals go on to the next line when it is filled. */
    private void write(String text) {
        String line = text.substring(0, Math.min(text.length(), columns - 1));
        err.print('\r' + line + " ".repeat(Math.max(0, width - line.length())));
        err.flush();
        width = line.length();
    }
}
