package eddyreach.cli;

import eddyreach.model.InputException;
import eddyreach.model.Library;
import eddyreach.model.Problem;
import eddyreach.model.Question;
import eddyreach.model.StudyInput;
import eddyreach.report.PictureWriter.Format;
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
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers a question about one target without a study file. */
@Command(
        name = "ask",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        sortOptions = false,
        description = "Will this switch see this part, from how far, and why? Writes no files unless --into is given.",
        footer = {
            "",
            "Without a size the part is as wide as the standard target of the switch, and",
            "then 1 mm thick unless --thickness is given.",
            "",
            "Examples:",
            "  eddyreach ask --switch p14-reference --material aluminium --thickness 10um",
            "  eddyreach ask --switch p14-reference --material fe360 --thickness 4mm \\",
            "      --diameter 8mm",
            "  eddyreach ask --switch p14-reference --layer \"zinc 8 um\" \\",
            "      --layer \"fe360 1.5 mm\" --square 30mm --into answer"
        })
final class AskCommand implements Callable<Integer> {

    private static final String ID = "question";
    private static final Map<String, String> OPTIONS = Map.of("side", "--square", "layers", "--layer");

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--switch",
            required = true,
            paramLabel = "SWITCH",
            description = "id of a switch (see: eddyreach list) or the path of its file")
    private String switchReference;

    @Option(names = "--material", paramLabel = "ID", description = "material of the part")
    private String material;

    @Option(names = "--thickness", paramLabel = "LENGTH", description = "thickness with its unit, such as 10um")
    private String thickness;

    @Option(
            names = "--layer",
            paramLabel = "LAYER",
            description = "instead of material and thickness, once for each layer, the one nearest to the switch first:"
                    + " material and thickness, such as \"zinc 8 um\"")
    private List<String> layers;

    @Option(names = "--diameter", paramLabel = "LENGTH", description = "the part is a disc of this diameter")
    private String diameter;

    @Option(names = "--square", paramLabel = "LENGTH", description = "the part is a square of this side")
    private String square;

    @Option(names = "--plate", description = "the part is so wide that its edges do not count")
    private boolean plate;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            description = "also write tables, pictures and a page to send on into this folder")
    private String into;

    AskCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        checkUsage();
        StudyInput study = study();
        Job job = new Job(terminal, false);
        if (into == null) {
            job.run(study.withoutFieldPictures(), Optional.empty(), Set.of());
            return ExitCode.DONE;
        }
        Path folder = OutputFolder.named(into, terminal.workingFolder());
        OutputFolder.check(folder);
        job.run(study, Optional.of(folder), EnumSet.of(Format.PNG));
        return ExitCode.DONE;
    }

    private void checkUsage() {
        if (material == null && layers == null) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "What is the part made of? Give --material, or --layer once for each layer");
        }
        if ((diameter == null ? 0 : 1) + (square == null ? 0 : 1) + (plate ? 1 : 0) > 1) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "Only one of --diameter, --square and --plate can be given");
        }
        if (layers != null && (material != null || thickness != null)) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--layer stands in place of --material and --thickness");
        }
    }

    private StudyInput study() {
        Map<String, String> words = new LinkedHashMap<>();
        put(words, "material", material);
        put(words, "thickness", thickness);
        put(words, "diameter", diameter);
        put(words, "side", square);
        put(words, "shape", diameter != null ? "disc" : square != null ? "square" : plate ? "plate" : null);
        List<Map<String, String>> stack = new ArrayList<>();
        if (layers != null) {
            layers.forEach(layer -> stack.add(layer(layer)));
        }
        try {
            return Question.read(ID, switchReference, words, stack, new Library(terminal.workingFolder()));
        } catch (InputException e) {
            throw new InputException(
                    e.problems().stream().map(AskCommand::named).toList());
        }
    }

    private static void put(Map<String, String> words, String key, String text) {
        if (text != null) {
            words.put(key, text);
        }
    }

    /** Material and thickness are parted by the first space. */
    private static Map<String, String> layer(String text) {
        String[] parts = text.strip().split("\\s+", 2);
        return parts.length == 2 ? Map.of("material", parts[0], "thickness", parts[1]) : Map.of("material", parts[0]);
    }

    /** A problem of the question under the name of the option that caused it. */
    private static Problem named(Problem p) {
        if (p.line() > 0 || p.key().isEmpty()) {
            return p;
        }
        int end = p.key().indexOf('[');
        String key = end < 0 ? p.key() : p.key().substring(0, end);
        String place = OPTIONS.getOrDefault(key, "--" + key);
        String rest = end < 0
                ? ""
                : p.key().substring(end).replaceAll("[\\[\\]]", " ").replace(" .", ", ");
        return new Problem(place + rest.stripTrailing(), 0, 0, "", p.message());
    }
}
