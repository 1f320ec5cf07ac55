package eddyreach.model.read;

import eddyreach.model.yaml.Node;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The words for a target's shape and the keys that belong to each. */
public enum Shape {
    STANDARD("thickness", "layers", "open area", "mesh"),
    PLATE("thickness", "layers", "open area", "mesh"),
    DISC("thickness", "layers", "open area", "mesh", "diameter", "coating"),
    SQUARE("thickness", "layers", "open area", "mesh", "side"),
    RECTANGLE("thickness", "layers", "open area", "mesh", "width", "height"),
    WASHER("thickness", "outer", "inner", "slit", "coating"),
    TUBE("outer", "inner", "wall", "length", "slit", "coating"),
    CYLINDER("diameter", "length", "coating"),
    SPHERE("diameter"),
    SCREW("head diameter", "head height", "shank diameter", "shank length", "point first", "coating"),
    RINGS("rings");

    private static final Set<Shape> SHEETS = EnumSet.of(STANDARD, PLATE, DISC, SQUARE, RECTANGLE);
    private static final List<String> SIZES = List.of("diameter", "side", "width", "height");

    private final Set<String> keys;

    Shape(String... keys) {
        this.keys = Set.of(keys);
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean isSheet() {
        return SHEETS.contains(this);
    }

    /** All words, or those of sheets. */
    static Map<String, Shape> words(boolean sheetsOnly) {
        return Arrays.stream(values())
                .filter(s -> !sheetsOnly || s.isSheet())
                .collect(Collectors.toMap(Shape::word, s -> s));
    }

    /** Records the keys of a place that belong to other shapes; null when the shape is not known. */
    static void check(Node node, Shape shape, boolean sheetsOnly) {
        Map<String, List<String>> owners = new LinkedHashMap<>();
        for (Shape s : values()) {
            for (String key : sheetsOnly
                    ? s.keys.stream().filter(SIZES::contains).sorted().toList()
                    : s.sorted()) {
                if (!sheetsOnly || s.isSheet()) {
                    owners.computeIfAbsent(key, k -> new ArrayList<>()).add(s.word());
                }
            }
        }
        owners.forEach((key, words) -> {
            node.knows(key);
            if (shape != null && !shape.keys.contains(key) && node.has(key)) {
                node.problem(key, complaint(key, shape, words));
            }
        });
    }

    private List<String> sorted() {
        return keys.stream().sorted().toList();
    }

    private static String complaint(String key, Shape shape, List<String> words) {
        if (key.equals("slit") && shape != RINGS) {
            return "a slit stops the current round a hole, but this shape is solid; needs a washer or a tube";
        }
        if (key.equals("slit")) {
            return "stands beside rings, give it in each ring";
        }
        int last = words.size() - 1;
        String all = last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
        return "goes only with the shape" + (last == 0 ? " " : "s ") + all;
    }
}
