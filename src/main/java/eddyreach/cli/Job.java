package eddyreach.cli;

import eddyreach.engine.core.Progress;
import eddyreach.report.draw.PictureWriter;
import eddyreach.report.page.Csv;
import eddyreach.study.Checkpoint;
import eddyreach.study.ResultFiles;
import eddyreach.study.ResultJson;
import eddyreach.study.RunState;
import eddyreach.study.Stamp;
import eddyreach.study.StudyInput;
import eddyreach.study.StudyResult;
import eddyreach.study.TextReport;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

/** Runs one study, writes its files and reports. */
final class Job {

    private static final String INDENT = "  ";

    private final Terminal terminal;
    private final Show show;
    private final String reference;
    private final Csv.Decimal decimal;

    /** What is shown of a result. */
    enum Show {

        /** All of it, and how far the run is. */
        REPORT,

        /** The answer in one line. */
        SENTENCE,

        /** The JSON document; how far the run is goes elsewhere. */
        JSON,

        /** Errors only. */
        NOTHING;

        private boolean quiet() {
            return this == SENTENCE || this == NOTHING;
        }
    }

    /**
     * @param show what is shown
     * @param reference what the asker calls it; empty if nothing
     * @param decimal how tables write numbers
     */
    Job(Terminal terminal, Show show, String reference, Csv.Decimal decimal) {
        this.terminal = terminal;
        this.show = show;
        this.reference = reference;
        this.decimal = decimal;
    }

    /**
     * Does all of it.
     *
     * @param folder where to write the files; none are written without
     * @return false when it was stopped before its end; what was finished is then written
     * @throws IOException when a file cannot be written
     */
    boolean run(StudyInput study, Optional<Path> folder, Set<PictureWriter.Format> formats) throws IOException {
        if (study.resumable().isPresent() && folder.isPresent()) {
            try (Interruption interruption = new Interruption(terminal.err())) {
                return run(study, folder.get(), formats, interruption::requested);
            }
        }
        finish(compute(study, Checkpoint.NONE), folder, formats);
        return true;
    }

    /** A study that can be stopped, and that goes on from where an earlier run was stopped. */
    boolean run(StudyInput study, Path folder, Set<PictureWriter.Format> formats, BooleanSupplier stop)
            throws IOException {
        RunState state = new RunState(folder, study, study.resumable().orElseThrow(), stop);
        switch (state.found()) {
            case LINES -> {
                if (!show.quiet()) {
                    terminal.err()
                            .println("Going on with " + state.kept().size() + " finished pieces of an earlier run.");
                }
            }
            case OTHER_STUDY ->
                terminal.err().println("An unfinished run in " + folder + " belongs to another study; starting anew.");
            case DAMAGED ->
                terminal.err()
                        .println("The unfinished run in " + folder + " is damaged and is not used; starting anew.");
            case NOTHING -> {}
        }
        terminal.err().flush();
        StudyResult result = compute(study, state);
        if (result.partial()) {
            state.save();
        }
        finish(result, Optional.of(folder), formats);
        if (!result.partial()) {
            state.remove();
        }
        return !result.partial();
    }

    private void finish(StudyResult result, Optional<Path> folder, Set<PictureWriter.Format> formats)
            throws IOException {
        List<Path> files = List.of();
        if (folder.isPresent()) {
            files = ResultFiles.write(result, folder.get(), formats, Stamp.today(reference), decimal);
        }
        switch (show) {
            case REPORT -> {
                terminal.out().print(TextReport.of(result, folder, terminal.colours()));
                if (!formats.isEmpty() && !files.isEmpty()) {
                    listPictures(files, formats);
                }
            }
            case SENTENCE -> terminal.out().println(result.presentation().answer());
            case JSON ->
                terminal.out()
                        .print(ResultJson.of(
                                result,
                                files.stream()
                                        .map(f -> f.getFileName().toString())
                                        .toList()));
            case NOTHING -> {}
        }
        terminal.out().flush();
    }

    private StudyResult compute(StudyInput study, Checkpoint checkpoint) {
        if (show.quiet()) {
            return study.run(Progress.NONE, checkpoint);
        }
        try (ProgressLine line = ProgressLine.on(terminal, study.id())) {
            return study.run(line, checkpoint);
        }
    }

    private void listPictures(List<Path> files, Set<PictureWriter.Format> formats) {
        String kinds =
                formats.stream().sorted().map(f -> f.ending().substring(1)).collect(Collectors.joining(" and "));
        List<String> names = files.stream()
                .map(f -> f.getFileName().toString())
                .filter(n -> formats.stream().anyMatch(f -> n.endsWith(f.ending())))
                .map(n -> n.substring(0, n.lastIndexOf('.')))
                .distinct()
                .toList();
        terminal.out().println();
        terminal.out().println("Pictures, in " + files.get(0).getParent() + ", as " + kinds + ":");
        StringBuilder line = new StringBuilder(INDENT);
        for (String name : names) {
            if (line.length() > INDENT.length() && line.length() + name.length() > TextReport.WIDTH) {
                terminal.out().println(line.toString().stripTrailing());
                line.setLength(INDENT.length());
            }
            line.append(name).append(INDENT);
        }
        terminal.out().println(line.toString().stripTrailing());
    }
}
