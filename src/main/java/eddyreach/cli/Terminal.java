package eddyreach.cli;

import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * Where a command reads from and writes to.
 *
 * @param out for answers
 * @param err for errors and progress
 * @param workingFolder folder from which names of files count; the empty path is the current one
 * @param interactive whether a person sees it: then colours and progress are shown
 */
record Terminal(PrintWriter out, PrintWriter err, Path workingFolder, boolean interactive) {}
