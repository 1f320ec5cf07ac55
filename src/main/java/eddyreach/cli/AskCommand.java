package eddyreach.cli;

import eddyreach.kinds.approach.ApproachInput;
import eddyreach.kinds.approach.ComparedInput;
import eddyreach.kinds.approach.PartQuestion;
import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.report.draw.PictureWriter.Format;
import eddyreach.study.ResultFiles;
import eddyreach.study.StudyInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers a question about one target without a study file. */
@Command(
        name = "ask",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Will this switch detect this part, from how far, and why? Writes files only with --into.",
        footer = {
            "",
            "Without a shape the part is as wide as the standard target of the switch, and",
            "then 1 mm thick unless --thickness is given. The distance counts to the",
            "nearest point of the part, paint and plating included.",
            "",
            "Examples:",
            "  eddyreach ask --switch m18-flush --material aluminium --cylinder 8mm \\",
            "      --length 12mm",
            "  eddyreach ask --switch m18-flush --layer \"aluminium-foil 10 um\" \\",
            "      --layer \"paper 0.4 mm\"",
            "  eddyreach ask --switch m18-flush --material fe360 --washer 20mm/10mm \\",
            "      --thickness 2mm --coating \"zinc 8 um\" --offset 6mm --into answer"
        })
final class AskCommand implements Callable<Integer> {

    private static final String ID = "question";

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--switch",
            required = true,
            paramLabel = "SWITCH",
            description =
                    "id of a switch (see: eddyreach list) or the path of its file; more than once to compare switches")
    private List<String> switches;

    @Option(
            names = "--mount",
            paramLabel = "MOUNT",
            description =
                    "the switch stands in this mount: id of a shipped one or the path of its file; in free air unless given")
    private String mountReference;

    @Mixin
    private PartOptions part;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "also write tables, pictures and a page to send on into this folder")
    private String into;

    @Option(names = "--quiet", description = "one line only: the answer")
    private boolean quiet;

    @Option(names = "--json", description = "print the result as a JSON document and nothing else")
    private boolean json;

    @Mixin
    private FileOptions files;

    AskCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        part.check(spec.commandLine());
        Job.Show show = show();
        StudyInput study = study();
        Job job = new Job(terminal, show, files.reference(), files.decimal());
        if (into == null) {
            job.run(study.withoutFieldPictures(), Optional.empty(), Set.of());
            return ExitCode.DONE;
        }
        Path folder = OutputFolder.named(into, terminal.workingFolder());
        OutputFolder.check(folder);
        ResultFiles.check(folder);
        job.run(study, Optional.of(folder), EnumSet.of(Format.PNG));
        return ExitCode.DONE;
    }

    private Job.Show show() {
        if (quiet && json) {
            throw new CommandLine.ParameterException(spec.commandLine(), "--quiet and --json exclude each other");
        }
        return quiet ? Job.Show.SENTENCE : json ? Job.Show.JSON : Job.Show.REPORT;
    }

    private StudyInput study() {
        Set<String> ids = new HashSet<>();
        List<ApproachInput> each = new ArrayList<>();
        for (String reference : switches) {
            ApproachInput one = study(reference);
            if (!ids.add(one.switchModel().id())) {
                throw new InputException("--switch", "\"" + one.switchModel().id() + "\" is given twice");
            }
            each.add(one);
        }
        return each.size() == 1 ? each.get(0) : new ComparedInput(each);
    }

    private ApproachInput study(String reference) {
        try {
            return PartQuestion.read(
                    ID,
                    reference,
                    Optional.ofNullable(mountReference),
                    part.words(),
                    part.layers(),
                    new Library(terminal.workingFolder()));
        } catch (InputException e) {
            throw new InputException(e.problems().stream().map(part::named).toList());
        }
    }
}
