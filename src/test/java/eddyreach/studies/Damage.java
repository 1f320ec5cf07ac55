package eddyreach.studies;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Damages a file in its bytes, tokens, lines or tree; the same number always gives the same damage. */
public final class Damage {

    private static final int KINDS = 4;
    private static final List<String> TOKENS = List.of(
            "0",
            "-1",
            "NaN",
            ".inf",
            "1e400",
            "",
            "~",
            "[]",
            "{}",
            "[[",
            "}",
            "\"",
            "'",
            "|",
            ">",
            "&a",
            "*a",
            "!!int",
            "? ",
            ": ",
            "- ",
            "#",
            "%",
            "@",
            "`",
            "\t",
            "5,5 mm",
            "5 mm",
            "200 kHz",
            "true",
            "<<: *x",
            "---",
            "...",
            "\0",
            "\ufeff",
            "\ud83d\ude00",
            "%YAML 9.9",
            "0x10",
            "1_000",
            "\u2028",
            "copper");

    private final byte[] original;
    private final String text;
    private final Object tree;
    private final long seed;

    /**
     * @param original a file that is in order
     * @param seed of all its damages
     */
    public Damage(byte[] original, long seed) {
        this.original = original;
        this.seed = seed;
        text = new String(original, StandardCharsets.UTF_8);
        tree = new Load(LoadSettings.builder().build()).loadFromString(text);
    }

    /** The file with its damage of a number. */
    public byte[] number(int i) {
        // without the mixing, neighbouring seeds give nearly the same first numbers
        Random random = new Random((seed + i) * 0x9E3779B97F4A7C15L);
        return switch (i % KINDS) {
            case 0 -> bytes(random);
            case 1 -> tokens(random).getBytes(StandardCharsets.UTF_8);
            case 2 -> lines(random).getBytes(StandardCharsets.UTF_8);
            default -> tree(random).getBytes(StandardCharsets.UTF_8);
        };
    }

    private byte[] bytes(Random random) {
        byte[] damaged = original.clone();
        int count = 1 + random.nextInt(4);
        for (int i = 0; i < count; i++) {
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(8) == 0 ? Arrays.copyOf(damaged, random.nextInt(damaged.length)) : damaged;
    }

    private String tokens(Random random) {
        String[] words = text.split("(?<=[ \n])");
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int at = random.nextInt(words.length);
            String end = words[at].endsWith("\n") ? "\n" : " ";
            words[at] = random.nextBoolean() ? token(random) + end : words[at] + token(random) + end;
        }
        return String.join("", words);
    }

    private static String token(Random random) {
        return TOKENS.get(random.nextInt(TOKENS.size()));
    }

    private String lines(Random random) {
        List<String> lines = new ArrayList<>(List.of(text.split("\n")));
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            int at = random.nextInt(lines.size());
            int other = random.nextInt(lines.size());
            switch (random.nextInt(5)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, lines.get(other));
                case 2 -> Collections.swap(lines, at, other);
                case 3 -> lines.set(at, " ".repeat(random.nextInt(6)) + lines.get(at));
                default -> lines.set(at, lines.get(at).strip());
            }
        }
        return String.join("\n", lines);
    }

    private String tree(Random random) {
        Object root = copy(tree);
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            List<Object> groups = groups(root);
            if (groups.isEmpty()) {
                break;
            }
            Object other = groups.get(random.nextInt(groups.size()));
            edit(groups.get(random.nextInt(groups.size())), copy(other), random);
        }
        return new Dump(DumpSettings.builder().build()).dumpToString(root);
    }

    /** All maps and lists that are not empty. */
    private static List<Object> groups(Object node) {
        List<Object> found = new ArrayList<>();
        Iterable<?> members = node instanceof Map<?, ?> map ? map.values() : node instanceof List<?> l ? l : List.of();
        for (Object member : members) {
            if (found.isEmpty()) {
                found.add(node);
            }
            found.addAll(groups(member));
        }
        return found;
    }

    private static Object copy(Object node) {
        if (node instanceof Map<?, ?> map) {
            Map<Object, Object> copy = new LinkedHashMap<>();
            map.forEach((key, value) -> copy.put(key, copy(value)));
            return copy;
        }
        return node instanceof List<?> list
                ? new ArrayList<>(list.stream().map(Damage::copy).toList())
                : node;
    }

    /** Deletes, duplicates, swaps or replaces a member of a group. */
    private static void edit(Object group, Object other, Random random) {
        if (group instanceof Map<?, ?>) {
            @SuppressWarnings("unchecked")
            Map<Object, Object> map = (Map<Object, Object>) group;
            List<Object> keys = new ArrayList<>(map.keySet());
            Object one = keys.get(random.nextInt(keys.size()));
            Object two = keys.get(random.nextInt(keys.size()));
            Object value = map.get(one);
            switch (random.nextInt(6)) {
                case 0 -> map.remove(one);
                case 1 -> map.put(one + token(random), copy(value));
                case 2 -> map.put(one, map.put(two, value));
                case 3 -> map.put(one, token(random));
                case 4 -> map.put(one, other);
                default -> map.put(one, new ArrayList<>(List.of(copy(value))));
            }
            return;
        }
        @SuppressWarnings("unchecked")
        List<Object> list = (List<Object>) group;
        int at = random.nextInt(list.size());
        switch (random.nextInt(6)) {
            case 0 -> list.remove(at);
            case 1 -> list.add(copy(list.get(at)));
            case 2 -> Collections.swap(list, at, random.nextInt(list.size()));
            case 3 -> list.set(at, token(random));
            case 4 -> list.set(at, other);
            default -> list.set(at, new ArrayList<>(List.of(copy(list.get(at)))));
        }
    }
}
