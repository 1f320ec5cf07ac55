package eddyreach.cli;

import eddyreach.model.read.Library;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Problem;
import eddyreach.report.draw.PictureWriter.Format;
import eddyreach.studies.StudyReader;
import eddyreach.study.ResultFiles;
import eddyreach.study.StudyInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs studies. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Runs studies: switching distances, reasons, tables and pictures.",
        footer = {
            "",
            "Examples:",
            "  eddyreach run m18-derating",
            "  eddyreach run m18-derating my-study.yaml --into monday --formats png,svg",
            "  eddyreach run my-study.yaml --no-pictures"
        })
final class RunCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "STUDY",
            description = "id of a study (see: eddyreach list) or the path of its file")
    private List<String> studies;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "where the files go: the folder itself for one study, a folder in it for each of several;"
                    + " results/<study> unless given")
    private String into;

    @Option(
            names = "--formats",
            paramLabel = "FORMAT",
            split = ",",
            description = "formats of the pictures, png or svg or png,svg; png unless given")
    private List<Format> formats;

    @Option(names = "--no-pictures", description = "tables and report only")
    private boolean noPictures;

    @Option(names = "--quiet", description = "no report, errors only")
    private boolean quiet;

    @Option(names = "--json", description = "print the result as a JSON document and nothing else")
    private boolean json;

    @Mixin
    private FileOptions files;

    RunCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (noPictures && formats != null) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--no-pictures and --formats exclude each other");
        }
        if (formats != null && formats.isEmpty()) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--formats names no format, needs png or svg or png,svg");
        }
        return run(studies, Optional.ofNullable(into), pictures(), show()) ? ExitCode.DONE : ExitCode.STOPPED;
    }

    private Job.Show show() {
        if (quiet && json) {
            throw new CommandLine.ParameterException(spec.commandLine(), "--quiet and --json exclude each other");
        }
        if (json && studies.size() > 1) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--json prints one document, so it needs one study");
        }
        return quiet ? Job.Show.NOTHING : json ? Job.Show.JSON : Job.Show.REPORT;
    }

    private Set<Format> pictures() {
        if (noPictures) {
            return Set.of();
        }
        return formats == null ? EnumSet.of(Format.PNG) : EnumSet.copyOf(formats);
    }

    /** False when it was stopped; studies that come later are then not run. */
    private boolean run(List<String> references, Optional<String> target, Set<Format> wanted, Job.Show show)
            throws IOException {
        List<StudyInput> inputs = read(references, !wanted.isEmpty());
        Map<StudyInput, Path> folders = folders(inputs, target);
        for (Path folder : folders.values()) {
            OutputFolder.check(folder);
            ResultFiles.check(folder);
        }
        Job job = new Job(terminal, show, files.reference(), files.decimal());
        boolean first = true;
        for (StudyInput input : inputs) {
            if (!first && show == Job.Show.REPORT) {
                terminal.out().println();
            }
            first = false;
            if (!job.run(input, Optional.of(folders.get(input)), wanted)) {
                return false;
            }
        }
        return true;
    }

    /** All studies, before any is run; the errors of all are told together. */
    private List<StudyInput> read(List<String> references, boolean pictures) {
        Library library = new Library(terminal.workingFolder());
        List<StudyInput> inputs = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (String reference : references) {
            try {
                StudyInput input = StudyReader.read(library.studyFile(reference), library);
                inputs.add(pictures ? input : input.withoutFieldPictures());
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems.stream().distinct().toList());
        }
        return inputs;
    }

    private Map<StudyInput, Path> folders(List<StudyInput> inputs, Optional<String> target) {
        Path base = target.map(t -> OutputFolder.named(t, terminal.workingFolder()))
                .orElse(terminal.workingFolder().resolve(OutputFolder.RESULTS));
        Map<StudyInput, Path> folders = new LinkedHashMap<>();
        for (StudyInput input : inputs) {
            Path folder = target.isPresent() && inputs.size() == 1 ? base : OutputFolder.below(base, input.id());
            if (folders.containsValue(folder)) {
                throw new InputException(input.id(), "two of the studies have this name and would share a folder");
            }
            folders.put(input, folder);
        }
        return folders;
    }
}
