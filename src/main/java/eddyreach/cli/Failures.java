package eddyreach.cli;

import eddyreach.linalg.MemoryException;
import eddyreach.model.yaml.InputException;
import eddyreach.numerics.SelfCheckException;
import eddyreach.oscillator.NoOscillationException;
import eddyreach.oscillator.UnworkableException;
import eddyreach.switching.NoTrimException;
import eddyreach.units.Texts;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Turns everything that can go wrong into sentences and an exit code. */
final class Failures {

    private static final Pattern FILE_WITH_DASH = Pattern.compile("-[^-].*\\.ya?ml");

    private Failures() {}

    /** Wrong usage: what is wrong, what was perhaps meant, where the help is. */
    static int usage(CommandLine.ParameterException e, String[] args) {
        CommandLine command = e.getCommandLine();
        PrintWriter err = command.getErr();
        Optional<String> dashed =
                Stream.of(args).filter(a -> FILE_WITH_DASH.matcher(a).matches()).findFirst();
        if (dashed.isPresent()) {
            err.println(Texts.excerpt(dashed.get()) + ": begins with -; write ./" + Texts.excerpt(dashed.get()));
        } else {
            err.println(e.getMessage());
            if (e instanceof CommandLine.UnmatchedArgumentException unmatched
                    && !unmatched.getSuggestions().isEmpty()) {
                err.println("Perhaps meant: " + String.join(", ", unmatched.getSuggestions()));
            }
        }
        err.println("How it is used: " + command.getCommandSpec().qualifiedName() + " --help");
        err.flush();
        return ExitCode.BAD_INPUT;
    }

    /**
     * An exception that ended a command. The input's fault are an {@link InputException} and what physics refuses, an
     * {@link UnworkableException}; a computation that could not be done has a type of its own; all else, a plain
     * {@link ArithmeticException} included, is a mistake in the program and is called so.
     */
    static int execution(Exception e, PrintWriter err, boolean trace) {
        int code = ExitCode.FAILED;
        if (outOfMemory(e)) {
            return memory(e, err, trace);
        }
        if (e instanceof InputException input) {
            code = ExitCode.BAD_INPUT;
            err.println(input.getMessage());
            int n = input.problems().size();
            err.println((n == 1 ? "1 error" : n + " errors") + "; nothing was run.");
        } else if (e instanceof UnworkableException) {
            code = ExitCode.BAD_INPUT;
            err.println(e.getMessage());
        } else if (computationFailed(e)) {
            err.println("The computation failed: " + e.getMessage());
        } else if (e instanceof IOException io) {
            err.println(sentence(io));
        } else if (e instanceof UncheckedIOException io) {
            err.println(sentence(io.getCause()));
        } else {
            err.println("Internal error, a mistake in the program and not in the input: " + e);
            err.println("The option --trace shows where it happened.");
        }
        if (trace) {
            e.printStackTrace(err);
        }
        err.flush();
        return code;
    }

    /** A failed self-check, too little memory, or a switch that no trim or frequency suits. */
    private static boolean computationFailed(Exception e) {
        return e instanceof SelfCheckException
                || e instanceof MemoryException
                || e instanceof NoTrimException
                || e instanceof NoOscillationException;
    }

    /** Threads hand on what ended them as the cause of an exception. */
    private static boolean outOfMemory(Throwable e) {
        Throwable cause = e;
        while (cause != null && !(cause instanceof OutOfMemoryError)) {
            cause = cause.getCause();
        }
        return cause != null;
    }

    /** What was computed is too large for the memory. */
    static int memory(Throwable e, PrintWriter err, boolean trace) {
        long heap = Runtime.getRuntime().maxMemory() >> 20;
        err.println("This does not fit into the memory of " + heap + " MB that Java may use. Ask for fewer points or"
                + " targets, or give it more: java -Xmx2g -jar ...");
        if (trace) {
            e.printStackTrace(err);
        }
        err.flush();
        return ExitCode.FAILED;
    }

    private static String sentence(IOException e) {
        String why = e instanceof AccessDeniedException
                ? ": no permission"
                : e instanceof FileAlreadyExistsException ? ": a file of this name is in the way" : "";
        return "Cannot read or write: " + e.getMessage() + why;
    }
}
