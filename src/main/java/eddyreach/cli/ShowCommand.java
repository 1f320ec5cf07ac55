package eddyreach.cli;

import eddyreach.model.read.Library;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Prints a file that can be named by its id, which may lie within the program. */
@Command(
        name = "show",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description =
                "Prints the file of a switch, a mount, a study or the materials, shipped ones too: to read, or as a"
                        + " start for your own.",
        footer = {
            "",
            "Examples:",
            "  eddyreach show m18-derating",
            "  eddyreach show materials",
            "  eddyreach show p14-reference > my-switch.yaml"
        })
final class ShowCommand implements Callable<Integer> {

    private static final String MATERIALS = "materials";

    private final Terminal terminal;

    @Parameters(
            paramLabel = "ID",
            description = "id of a study, a switch or a mount (see: eddyreach list), or the word materials")
    private String id;

    ShowCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        Library library = new Library(terminal.workingFolder());
        String reference = id.equals(MATERIALS) ? Library.MATERIALS : id;
        terminal.out().print(new String(library.file(reference).content(), StandardCharsets.UTF_8));
        terminal.out().flush();
        return ExitCode.DONE;
    }
}
