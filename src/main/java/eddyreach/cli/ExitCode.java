package eddyreach.cli;

/** What the program returns to its caller. */
final class ExitCode {

    /** Done. */
    static final int DONE = 0;

    /** Ran, but a computation failed or a file could not be written. */
    static final int FAILED = 1;

    /** Wrong input or usage; nothing was run or written. */
    static final int BAD_INPUT = 2;

    /** Stopped by Ctrl-C: what was finished is written (128 and the number of the signal, as shells have it). */
    static final int STOPPED = 130;

    private ExitCode() {}
}
