package eddyreach.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Prints a script for bash (and zsh with bashcompinit) that completes commands and options of a"
                + " command named eddyreach, such as an alias of java -jar.",
        footer = {"", "Examples:", "  eddyreach completion > eddyreach-completion.sh"})
final class CompletionCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        CommandSpec root = spec.root();
        terminal.out().print(AutoComplete.bash(root.name(), root.commandLine()));
        terminal.out().flush();
        return ExitCode.DONE;
    }
}
