package eddyreach.linalg;

import java.util.function.LongSupplier;

/**
 * Permits to take memory: whoever needs much at once asks before, waits while others hold too much of it, and is refused when it would not fit
 * even alone. So threads never run out of it together.
 *
 * <p>What is taken for good, such as a kept factor, stays counted as used until the next time that nobody holds a permit; then the heap is
 * looked at afresh.
 */
public final class Memory {

    /** Of the heap of this process. */
    public static final Memory HEAP = new Memory(Memory::free);

    private final LongSupplier free;
    private long available;
    private long held;
    private int holders;

    /** @param free bytes that are free when nobody holds a permit; asked again after a collection of garbage where they are too few */
    Memory(LongSupplier free) {
        this.free = free;
    }

    private static long free() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.maxMemory() - (runtime.totalMemory() - runtime.freeMemory());
    }

    /**
     * Waits for a permit.
     *
     * @param bytes how much is needed at most
     * @throws MemoryException if there is not as much even when everybody else is done
     */
    public synchronized void take(long bytes) {
        while (true) {
            if (holders == 0) {
                look(bytes);
                if (bytes > available) {
                    throw new MemoryException(bytes, available);
                }
            }
            if (bytes <= available - held) {
                held += bytes;
                holders++;
                return;
            }
            waitForOthers();
        }
    }

    /** What is not reachable any more counts as used until it is collected. */
    private void look(long bytes) {
        available = free.getAsLong();
        if (bytes > available) {
            System.gc();
            available = free.getAsLong();
        }
    }

    private void waitForOthers() {
        try {
            wait();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new MemoryException(held, available - held);
        }
    }

    /**
     * Gives a permit back.
     *
     * @param bytes how much was asked for
     * @param kept how much of it stays in use
     */
    public synchronized void give(long bytes, long kept) {
        held -= bytes;
        available -= kept;
        holders--;
        notifyAll();
    }
}
