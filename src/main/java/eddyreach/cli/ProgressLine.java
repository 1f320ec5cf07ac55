package eddyreach.cli;

import eddyreach.study.Progress;
import java.io.PrintWriter;

/** One line on the terminal that is overwritten while a study runs. */
final class ProgressLine implements Progress {

    private static final int CELLS = 20;

    private final PrintWriter err;
    private final String name;
    private int width;
    private int shown = -1;
    private String stageShown = "";

    ProgressLine(PrintWriter err, String name) {
        this.err = err;
        this.name = name;
    }

    @Override
    public synchronized void at(String stage, int done, int total) {
        if (stage.equals(stageShown) && done <= shown) {
            return;
        }
        stageShown = stage;
        shown = done;
        int filled = CELLS * done / total;
        write(name + " [" + "#".repeat(filled) + " ".repeat(CELLS - filled) + "] " + stage + " " + done + "/" + total);
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
