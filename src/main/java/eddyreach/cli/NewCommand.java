package eddyreach.cli;

import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.SourceFile;
import eddyreach.studies.FileCheck;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a file to begin with. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Writes a small commented file as a start for your own switch, mount, study or materials. It"
                + " overwrites nothing.",
        footer = {
            "",
            "Your own materials are read from shared/materials.yaml below the working",
            "folder.",
            "",
            "Examples:",
            "  eddyreach new study my-study.yaml",
            "  eddyreach new switch my-switch.yaml"
        })
final class NewCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(index = "0", paramLabel = "KIND", description = "switch, mount, study or materials")
    private FileCheck.Kind kind;

    @Parameters(index = "1", paramLabel = "FILE", description = "path of the file")
    private String file;

    NewCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Path path = terminal.workingFolder().resolve(SourceFile.path(file));
        try {
            Files.writeString(path, Beginnings.of(kind), StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        } catch (FileAlreadyExistsException e) {
            throw new InputException(file, "is there already; new overwrites nothing");
        } catch (NoSuchFileException e) {
            throw new InputException(file, "its folder does not exist");
        }
        terminal.out().println(file + ": a " + kind.label() + " file to begin with; see also: eddyreach check " + file);
        terminal.out().flush();
        return ExitCode.DONE;
    }
}
