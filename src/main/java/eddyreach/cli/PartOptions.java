package eddyreach.cli;

import eddyreach.model.yaml.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The options that say what the part is, as the words of a study file. */
final class PartOptions {

    private static final Pattern LAYER = Pattern.compile("(\\S.*?)\\s+([+-]?[0-9.][^\\s]*(?:\\s+[^\\s0-9]+)?)");

    @Option(names = "--material", paramLabel = "ID", description = "material of the part")
    private String material;

    @Option(names = "--thickness", paramLabel = "LENGTH", description = "thickness with its unit, such as 10um")
    private String thickness;

    @Option(
            names = "--thickness-tolerance",
            paramLabel = "TOLERANCE",
            description =
                    "how far the thickness may differ either way, such as 8%% or 0.05mm; that usual for foil, sheet or"
                            + " plating unless given")
    private String thicknessTolerance;

    @Option(
            names = "--layer",
            paramLabel = "LAYER",
            description = "instead of material and thickness, once for each layer, the one nearest to the switch first:"
                    + " material and thickness, such as \"zinc 8 um\"")
    private List<String> layers;

    @Option(
            names = "--coating",
            paramLabel = "LAYER",
            description = "plating on every side of a disc, washer, tube, cylinder or screw, contained in its sizes")
    private String coating;

    @Option(
            names = "--offset",
            paramLabel = "LENGTH",
            description = "how far the axis of the part lies beside that of the switch; on the axis unless given")
    private String offset;

    @Option(
            names = "--temperature",
            paramLabel = "TEMPERATURE",
            description = "temperature of the part if it is not that of the switch, such as 200degC")
    private String temperature;

    @Option(names = "--diameter", paramLabel = "LENGTH", description = "the part is a disc of this diameter")
    private String diameter;

    @Option(names = "--square", paramLabel = "LENGTH", description = "the part is a square of this side")
    private String square;

    @Option(names = "--rectangle", paramLabel = "A/B", description = "the part is a rectangle, such as 20mm/30mm")
    private String rectangle;

    @Option(names = "--plate", description = "the part is so wide that its edges do not count")
    private boolean plate;

    @Option(
            names = "--washer",
            paramLabel = "OUTER/INNER",
            description = "the part is a washer of these diameters, such as 20mm/10mm; with --thickness")
    private String washer;

    @Option(
            names = "--tube",
            paramLabel = "OUTER/INNER",
            description = "the part is a tube, end on, of these diameters; with --length")
    private String tube;

    @Option(names = "--slit", description = "the washer or tube is cut through")
    private boolean slit;

    @Option(
            names = "--cylinder",
            paramLabel = "LENGTH",
            description = "the part is a rod, end on, of this diameter; with --length")
    private String cylinder;

    @Option(names = "--length", paramLabel = "LENGTH", description = "length of a cylinder or tube")
    private String length;

    @Option(names = "--sphere", paramLabel = "LENGTH", description = "the part is a ball of this diameter")
    private String sphere;

    @Option(
            names = "--head",
            paramLabel = "WIDE/HIGH",
            description = "the part is a screw, its head towards the switch: diameter and height of the head, such as"
                    + " 13mm/5mm; with --shank")
    private String head;

    @Option(
            names = "--shank",
            paramLabel = "WIDE/LONG",
            description = "diameter and length of the screw's shank, such as 8mm/30mm")
    private String shank;

    @Option(names = "--point-first", description = "the screw's end faces the switch, not its head")
    private boolean pointFirst;

    @Option(
            names = "--open-area",
            paramLabel = "SHARE",
            description = "share of small round holes in a perforated sheet, such as 40%%")
    private String openArea;

    @Option(
            names = "--mesh",
            paramLabel = "WIRE/PITCH",
            description = "the part is a mesh of bonded wires: wire diameter and distance from wire to wire, such as"
                    + " 0.2mm/1mm")
    private String mesh;

    /** A shape's option, its word, and the keys that the option gives, parted by a stroke. */
    private record Choice(String option, String shape, String text, List<String> keys) {}

    private List<Choice> choices() {
        return List.of(
                new Choice("--diameter", "disc", diameter, List.of("diameter")),
                new Choice("--square", "square", square, List.of("side")),
                new Choice("--rectangle", "rectangle", rectangle, List.of("width", "height")),
                new Choice("--plate", "plate", plate ? "" : null, List.of()),
                new Choice("--washer", "washer", washer, List.of("outer", "inner")),
                new Choice("--tube", "tube", tube, List.of("outer", "inner")),
                new Choice("--cylinder", "cylinder", cylinder, List.of("diameter")),
                new Choice("--sphere", "sphere", sphere, List.of("diameter")),
                new Choice(
                        "--head",
                        "screw",
                        head == null && shank != null ? "" : head,
                        List.of("head diameter", "head height")));
    }

    private Stream<Choice> chosen() {
        return choices().stream().filter(c -> c.text() != null);
    }

    /** Refuses options that do not go together. */
    void check(CommandLine command) {
        if (material == null && layers == null) {
            throw new CommandLine.ParameterException(
                    command, "What is the part made of? Give --material, or --layer once for each layer");
        }
        if (chosen().count() > 1) {
            throw new CommandLine.ParameterException(
                    command,
                    "Only one shape can be given, not "
                            + String.join(" and ", chosen().map(Choice::option).toList()));
        }
        if (layers != null && (material != null || thickness != null)) {
            throw new CommandLine.ParameterException(command, "--layer stands in place of --material and --thickness");
        }
    }

    /** What is known of the part, by the keys of a study file. */
    Map<String, String> words() {
        Map<String, String> words = new LinkedHashMap<>();
        put(words, "material", material);
        put(words, "thickness", thickness);
        put(words, "thickness tolerance", thicknessTolerance);
        chosen().forEach(c -> {
            put(words, "shape", c.shape());
            split(words, c.text(), c.keys());
        });
        put(words, "length", length);
        put(words, "offset", offset);
        put(words, "temperature", temperature);
        put(words, "slit", slit ? "yes" : null);
        split(words, shank, List.of("shank diameter", "shank length"));
        put(words, "point first", pointFirst ? "yes" : null);
        put(words, "open area", openArea);
        split(words, mesh, List.of("mesh.wire", "mesh.pitch"));
        if (coating != null) {
            layer(coating).forEach((key, text) -> words.put("coating." + key, text));
        }
        return words;
    }

    /** Material and thickness of each layer. */
    List<Map<String, String>> layers() {
        List<Map<String, String>> stack = new ArrayList<>();
        if (layers != null) {
            layers.forEach(layer -> stack.add(layer(layer)));
        }
        return stack;
    }

    private static void put(Map<String, String> words, String key, String text) {
        if (text != null) {
            words.put(key, text);
        }
    }

    /** Values parted by strokes; a missing one is left out, and what is too much stays in the last, which is refused for it. */
    private static void split(Map<String, String> words, String text, List<String> keys) {
        if (text == null || keys.isEmpty()) {
            return;
        }
        String[] parts = text.split("/", keys.size());
        for (int i = 0; i < parts.length; i++) {
            words.put(keys.get(i), parts[i]);
        }
    }

    /** The thickness is the last number with its unit; where there is none, the first space parts. */
    private static Map<String, String> layer(String text) {
        Matcher m = LAYER.matcher(text.strip());
        String[] parts = m.matches()
                ? new String[] {m.group(1), m.group(2)}
                : text.strip().split("\\s+", 2);
        return parts.length == 2 ? Map.of("material", parts[0], "thickness", parts[1]) : Map.of("material", parts[0]);
    }

    /** A problem of the question under the name of the option that caused it. */
    Problem named(Problem p) {
        if (p.line() > 0 || p.key().isEmpty()) {
            return p;
        }
        int end = (p.key() + "[").indexOf('[');
        int dot = (p.key() + ".").indexOf('.');
        String key = p.key().substring(0, Math.min(end, dot));
        String rest = p.key()
                .substring(key.length())
                .replaceAll("[\\[\\]]", " ")
                .replace(" .", ", ")
                .replaceAll("^\\.", ", ");
        return new Problem(place(key) + rest.stripTrailing(), 0, 0, "", p.message());
    }

    private String place(String key) {
        String shape = chosen().filter(c -> c.keys().contains(key))
                .map(c -> c.option() + (c.keys().size() > 1 ? ", " + key : ""))
                .findFirst()
                .orElse(null);
        return Objects.requireNonNullElseGet(shape, () -> switch (key) {
            case "layers" -> "--layer";
            case "shank diameter", "shank length" -> "--shank, " + key;
            default -> "--" + key.replace(' ', '-');
        });
    }
}
