package eddyreach.cli;

import eddyreach.engine.core.Progress;
import eddyreach.proof.Proof;
import eddyreach.proof.ProofPages;
import eddyreach.proof.ProofReport;
import eddyreach.proof.ProofResult;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Computes the check values and shows them beside the published ones. */
@Command(
        name = "prove",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Computes check values and shows them beside the published ones, with source, deviation and"
                + " verdict; also writes them as pages proof.html and proof.md.",
        footer = {
            "",
            "Exit code: 0 all values met; 1 a value not met, a computation failed or a file",
            "could not be written; 2 wrong usage.",
            "",
            "Examples:",
            "  eddyreach prove",
            "  eddyreach prove --into evidence"
        })
final class ProveCommand implements Callable<Integer> {

    private static final String NAME = "proof";

    private final Terminal terminal;
    private final Function<Progress, ProofResult> proof;

    @Option(names = "--into", paramLabel = "FOLDER", description = "where the pages go; results/proof unless given")
    private String into;

    ProveCommand(Terminal terminal) {
        this(terminal, progress -> new Proof().run(progress));
    }

    ProveCommand(Terminal terminal, Function<Progress, ProofResult> proof) {
        this.terminal = terminal;
        this.proof = proof;
    }

    @Override
    public Integer call() throws IOException {
        Path folder = into == null
                ? OutputFolder.below(terminal.workingFolder().resolve(OutputFolder.RESULTS), NAME)
                : OutputFolder.named(into, terminal.workingFolder());
        OutputFolder.check(folder);
        ProofResult result = compute();
        List<Path> pages = ProofPages.write(result, folder);
        terminal.out().print(ProofReport.of(result));
        terminal.out().println("Pages: " + pages.get(0) + ", " + pages.get(1).getFileName());
        terminal.out().flush();
        return result.passed() ? ExitCode.DONE : ExitCode.FAILED;
    }

    private ProofResult compute() {
        try (ProgressLine line = ProgressLine.on(terminal, NAME)) {
            return proof.apply(line);
        }
    }
}
