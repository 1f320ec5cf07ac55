package eddyreach.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks the terminal how wide it is, by the command {@code stty} of POSIX, which Java has no call for. */
final class TerminalWidth {

    private static final File DEVICE = new File("/dev/tty");
    private static final long PATIENCE_MS = 500;
    private static final Pattern SIZE = Pattern.compile("\\s*\\d+ (\\d{1,4})\\s*");

    private TerminalWidth() {}

    /** Columns; the usual ones where there is no such command. */
    static int columns() {
        if (!DEVICE.canRead()) {
            return Terminal.USUAL_WIDTH;
        }
        try {
            Process stty = new ProcessBuilder("stty", "size")
                    .redirectInput(DEVICE)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!stty.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)) {
                stty.destroy();
                return Terminal.USUAL_WIDTH;
            }
            return parse(new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII));
        } catch (IOException e) {
            return Terminal.USUAL_WIDTH;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Terminal.USUAL_WIDTH;
        }
    }

    /** The second number of "rows columns"; a terminal that does not know tells 0. */
    static int parse(String size) {
        Matcher m = SIZE.matcher(size);
        int columns = m.matches() ? Integer.parseInt(m.group(1)) : 0;
        return columns > 0 ? columns : Terminal.USUAL_WIDTH;
    }
}
