package eddyreach.linalg;

/** A factorisation was refused because it would not fit into the memory. */
public final class MemoryException extends ArithmeticException {

    private static final double MEGABYTE = 1e6;

    /**
     * @param needed bytes needed at most
     * @param free bytes that the Java heap still allows
     */
    public MemoryException(long needed, long free) {
        super(String.format(
                java.util.Locale.ROOT,
                "the field problem may need %.0f MB and the Java heap has %.0f MB left: ask for less accuracy or give Java more memory with"
                        + " -Xmx",
                needed / MEGABYTE,
                free / MEGABYTE));
    }
}
