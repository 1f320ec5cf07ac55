package eddyreach.cli;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Turns Ctrl-C into a request to stop: the end of the program waits until what is finished has been written. The exit code is then that
 * of the platform for an interrupted program.
 */
final class Interruption implements AutoCloseable {

    /** Longest time that the end of the program waits, s. */
    private static final long PATIENCE = 60;

    private final CountDownLatch done = new CountDownLatch(1);
    private final Thread hook;
    private volatile boolean requested;

    /** Watches until it is closed. */
    Interruption(PrintWriter err) {
        hook = new Thread(
                () -> {
                    requested = true;
                    err.println();
                    err.println("Stopping; what is finished is being written.");
                    err.flush();
                    try {
                        done.await(PATIENCE, TimeUnit.SECONDS);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                },
                "interruption");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** True from the moment on at which the program was asked to end. */
    boolean requested() {
        return requested;
    }

    /** Lets the program end. */
    @Override
    public void close() {
        done.countDown();
        if (!requested) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // the program is ending just now, and the hook no longer waits
                requested = true;
            }
        }
    }
}
