package eddyreach.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program; without a command it shows its help. */
@Command(
        name = "eddyreach",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Computes the sensing field of inductive proximity switches and how metal damps it: will this switch"
                    + " detect this part, from how far, and why."
        },
        commandListHeading = "%nCommands:%n",
        footer = {
            "",
            "Examples:",
            "  eddyreach list",
            "  eddyreach run m18-derating",
            "  eddyreach ask --switch p14-reference --material aluminium --thickness 10um",
            "  eddyreach check my-switch.yaml",
            "  eddyreach prove",
            "where eddyreach stands for: java -jar eddyreach-VERSION.jar",
            "",
            "Exit code: 0 done; 1 a computation failed or a file could not be written;",
            "2 wrong input or usage, then nothing was run or written; 130 stopped by Ctrl-C."
        })
final class Eddyreach implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--trace",
            scope = ScopeType.INHERIT,
            description = "after an error also show where in the program it happened")
    private boolean trace;

    private Eddyreach(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        spec.commandLine().usage(terminal.out());
        return ExitCode.DONE;
    }

    /** Runs the program and returns its exit code. */
    static int execute(Terminal terminal, String... args) {
        Eddyreach root = new Eddyreach(terminal);
        CommandLine line = new CommandLine(root);
        for (Supplier<Object> command : commands(terminal, args)) {
            line.addSubcommand(command.get());
        }
        line.setOut(terminal.out())
                .setErr(terminal.err())
                .setColorScheme(CommandLine.Help.defaultColorScheme(terminal.colours() ? Ansi.AUTO : Ansi.OFF))
                .setUsageHelpWidth(80)
                .setCaseInsensitiveEnumValuesAllowed(true)
                // a file may have a name that begins with @
                .setExpandAtFiles(false)
                .setParameterExceptionHandler(Failures::usage)
                .setExecutionExceptionHandler(
                        (e, command, parsed) -> Failures.execution(e, terminal.err(), root.trace));
        return finished(terminal, run(line, terminal.err(), root, args));
    }

    /** The command that is asked for alone, where no other is needed to run it: to make them all takes a tenth of a second. */
    private static Collection<Supplier<Object>> commands(Terminal terminal, String... args) {
        Map<String, Supplier<Object>> all = new LinkedHashMap<>();
        all.put("run", () -> new RunCommand(terminal));
        all.put("ask", () -> new AskCommand(terminal));
        all.put("check", () -> new CheckCommand(terminal));
        all.put("list", () -> new ListCommand(terminal));
        all.put("show", () -> new ShowCommand(terminal));
        all.put("new", () -> new NewCommand(terminal));
        all.put("prove", () -> new ProveCommand(terminal));
        Supplier<Object> asked = args.length == 0 ? null : all.get(args[0]);
        // completion lists what all of them take
        all.put("completion", () -> new CompletionCommand(terminal));
        return asked == null ? all.values() : List.of(asked);
    }

    private static int run(CommandLine line, PrintWriter err, Eddyreach root, String... args) {
        try {
            return line.execute(args);
        } catch (OutOfMemoryError e) {
            return Failures.memory(e, err, root.trace);
        }
    }

    /** An answer that did not reach its reader is no success. */
    private static int finished(Terminal terminal, int code) {
        if (!terminal.out().checkError()) {
            return code;
        }
        terminal.err().println("The answer could not be written: the output is full or closed.");
        terminal.err().flush();
        return code == ExitCode.DONE ? ExitCode.FAILED : code;
    }
}
