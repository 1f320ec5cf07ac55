package eddyreach.cli;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.FileCheck;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Reads files without running anything. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Reads files of switches, mounts, studies and materials and reports every mistake with its line and"
                        + " column. Computes nothing.",
        footer = {"", "Examples:", "  eddyreach check my-switch.yaml my-study.yaml", "  eddyreach check p14-reference"})
final class CheckCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "path of a file, or id of a study, a switch or a mount")
    private List<String> files;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Library library = new Library(terminal.workingFolder());
        int errors = 0;
        for (String reference : files) {
            try {
                SourceFile file = library.file(reference);
                FileCheck.Kind kind = FileCheck.check(file, library);
                String shipped = file instanceof SourceFile.Shipped ? "shipped " : "";
                terminal.out().println(file.name() + ": fine (" + shipped + kind.label() + ")");
            } catch (InputException e) {
                terminal.err().println(e.getMessage());
                errors += e.problems().size();
            }
        }
        if (errors > 0) {
            terminal.err().println(errors == 1 ? "1 error." : errors + " errors.");
        }
        return errors == 0 ? ExitCode.DONE : ExitCode.BAD_INPUT;
    }
}
