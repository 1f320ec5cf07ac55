package eddyreach.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The reference of all keys of all files, made from the JSON schemas, so that the two cannot disagree. */
final class FileReference {

    static final Path PAGE = Path.of("src/site/markdown/files.md");

    private static final Map<String, String> FILES = new LinkedHashMap<>();

    static {
        FILES.put("study", "A study: what to compute. In `studies`, or anywhere.");
        FILES.put("switch", "A switch. In `models`, or anywhere.");
        FILES.put("mount", "What holds a switch and stands around it. In `models`, or in a study.");
        FILES.put("materials", "Materials of your own, in `shared/materials.yaml`; they come before the shipped ones.");
    }

    /** Definitions that are plain values: named in the column of values, without keys of their own. */
    private final StringBuilder text = new StringBuilder();

    private Map<String, Object> schema = Map.of();

    private FileReference() {}

    static String text() throws IOException {
        FileReference r = new FileReference();
        r.write();
        return r.text.toString();
    }

    private void write() throws IOException {
        text.append("# Files\n\n");
        text.append(
                "Made from the schemas in `shared/schema`, which editors can use too. A group's keys follow under its name. Lengths, frequencies and"
                        + " all other quantities carry their unit: `0.6 mm`, `200 kHz`, `35 MS/m`, `20 degC`, `5 %`.\n");
        for (Map.Entry<String, String> file : FILES.entrySet()) {
            schema = read(Path.of("shared/schema/" + file.getKey() + ".schema.json"));
            text.append("\n## ")
                    .append(file.getKey())
                    .append("\n\n")
                    .append(file.getValue())
                    .append("\n");
            Set<String> groups = new LinkedHashSet<>();
            table(schema, groups);
            List<String> waiting = new ArrayList<>(groups);
            Set<String> done = new LinkedHashSet<>();
            while (!waiting.isEmpty()) {
                String name = waiting.remove(0);
                if (!done.add(name)) {
                    continue;
                }
                Map<String, Object> group = map(map(schema.get("$defs")).get(name));
                Map<String, Object> keys = withKeys(group);
                if (keys.isEmpty()) {
                    continue;
                }
                text.append("\n### ")
                        .append(file.getKey())
                        .append(": ")
                        .append(name)
                        .append("\n\n");
                text.append(sentence(group.get("description"))).append("\n");
                Set<String> further = new LinkedHashSet<>();
                table(keys, further);
                waiting.addAll(further);
            }
        }
    }

    private void table(Map<String, Object> object, Set<String> groups) {
        text.append("\n| key | value | what it is |\n|---|---|---|\n");
        rows("", object, groups);
    }

    private void rows(String path, Map<String, Object> object, Set<String> groups) {
        Set<Object> required = new LinkedHashSet<>(list(object.get("required")));
        map(object.get("properties")).forEach((key, described) -> {
            Map<String, Object> value = map(described);
            String full = path.isEmpty() ? key : path + "." + key;
            text.append("| `")
                    .append(full)
                    .append(required.contains(key) ? "` * | " : "` | ")
                    .append(kind(value, groups))
                    .append(" | ")
                    .append(cell(String.valueOf(
                            value.getOrDefault("description", resolved(value).getOrDefault("description", "")))))
                    .append(" |\n");
            Map<String, Object> inner = withKeys(value.containsKey("items") ? map(value.get("items")) : value);
            if (!value.containsKey("$ref")
                    && !map(value.getOrDefault("items", Map.of())).containsKey("$ref")) {
                rows(full + (value.containsKey("items") ? "[]" : ""), inner, groups);
            }
        });
        if (object.get("additionalProperties") instanceof Map<?, ?> any) {
            rows(path.isEmpty() ? "<id>" : path + ".<id>", map(any), groups);
        }
    }

    /** What may stand there, in a few words. */
    private String kind(Map<String, Object> value, Set<String> groups) {
        if (value.containsKey("$ref")) {
            String name = name(value);
            if (!withKeys(resolved(value)).isEmpty()) {
                groups.add(name);
                return "group *" + name + "*";
            }
            return switch (name) {
                case "line" -> "text";
                case "materialId" -> "material";
                case "targetName" -> "name";
                default -> name;
            };
        }
        if (value.containsKey("const")) {
            return "`" + value.get("const") + "`";
        }
        if (value.containsKey("enum")) {
            return list(value.get("enum")).stream()
                    .map(v -> "`" + word(v) + "`")
                    .collect(Collectors.joining(", "));
        }
        if (value.containsKey("oneOf") || value.containsKey("anyOf")) {
            return list(value.getOrDefault("oneOf", value.get("anyOf"))).stream()
                    .map(v -> kind(map(v), groups))
                    .distinct()
                    .collect(Collectors.joining(" or "));
        }
        if (value.containsKey("items")) {
            return "list of " + kind(map(value.get("items")), groups);
        }
        if (!withKeys(value).isEmpty()) {
            return "group";
        }
        Object type = value.get("type");
        if (type instanceof List<?> types) {
            return types.stream().map(t -> word(t)).collect(Collectors.joining(" or "));
        }
        return type == null ? "value" : type.equals("string") ? "text" : word(type);
    }

    private static String word(Object value) {
        return value instanceof Boolean b ? b ? "yes" : "no" : String.valueOf(value);
    }

    /** The object, or the first alternative, that has keys; empty if none has. */
    private Map<String, Object> withKeys(Map<String, Object> value) {
        Map<String, Object> r = resolved(value);
        if (r.containsKey("properties") || r.get("additionalProperties") instanceof Map<?, ?>) {
            return r;
        }
        for (Object alternative : list(r.getOrDefault("oneOf", r.get("anyOf")))) {
            Map<String, Object> found = withKeys(map(alternative));
            if (!found.isEmpty()) {
                return found;
            }
        }
        return Map.of();
    }

    private Map<String, Object> resolved(Map<String, Object> value) {
        return value.containsKey("$ref") ? map(map(schema.get("$defs")).get(name(value))) : value;
    }

    private static String name(Map<String, Object> value) {
        String ref = (String) value.get("$ref");
        return ref.substring(ref.lastIndexOf('/') + 1);
    }

    private static String sentence(Object description) {
        String s = String.valueOf(description);
        return s.isEmpty() ? s : Character.toUpperCase(s.charAt(0)) + s.substring(1) + ".";
    }

    private static String cell(String s) {
        return s.replace("|", "\\|").replace("\n", " ");
    }

    private static Map<String, Object> read(Path file) throws IOException {
        // JSON is YAML
        return map(new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file)));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return value instanceof Map<?, ?> m ? (Map<String, Object>) m : Map.of();
    }

    private static List<?> list(Object value) {
        return value instanceof List<?> l ? l : List.of();
    }
}
