package eddyreach.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;

/**
 * Where a command reads from and writes to.
 *
 * @param out for answers
 * @param err for errors and progress
 * @param workingFolder folder from which names of files count; the empty path is the current one
 * @param interactive whether a person sees it: then progress is a line that is overwritten
 * @param colours whether bold and colours are shown
 * @param width columns
 */
record Terminal(PrintWriter out, PrintWriter err, Path workingFolder, boolean interactive, boolean colours, int width) {

    /** Columns where nothing else is known. */
    static final int USUAL_WIDTH = 80;

    /**
     * What is fit for the surroundings.
     *
     * @param person whether a person sees it
     * @param environment variables: NO_COLOR with any text stands for no colours, TERM=dumb for a terminal that can overwrite nothing
     */
    static Terminal of(
            PrintWriter out, PrintWriter err, Path workingFolder, boolean person, Map<String, String> environment) {
        boolean capable = person && !"dumb".equals(environment.get("TERM"));
        boolean colours = capable && environment.getOrDefault("NO_COLOR", "").isEmpty();
        return new Terminal(out, err, workingFolder, capable, colours, capable ? TerminalWidth.columns() : USUAL_WIDTH);
    }
}
