package eddyreach.model.yaml;

import eddyreach.units.Dimension;
import eddyreach.units.Texts;
import eddyreach.units.Units;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A place in an input file: a group of keys, a list or a value, with line and column. The binding methods look a key
 * up, check its value and record what is wrong in the shared {@link Problems} instead of throwing, so that one reading
 * tells every error; after an error they return a stand-in (NaN, an empty text, an empty Optional, the least integer),
 * which must not be used to build anything: call {@link #finish()} first.
 *
 * <p>A key counts as known once it was asked for, or named in {@link #knows}; {@link #finish()} reports all others.
 *
 * <pre>
 * Problems problems = new Problems();
 * Node root = YamlTree.open(file, "study", problems);
 * double from = root.quantity("from", Dimension.LENGTH, 0, 0.1);
 * int points = root.integer("points", 2, 1000, 50);
 * root.finish();
 * problems.throwIfAny();
 * </pre>
 */
public final class Node {

    private static final int LONGEST_NOTE = 4000;
    private static final Set<String> NOTHING = Set.of("", "~", "null", "Null", "NULL");

    private enum Form {
        MAP,
        LIST,
        VALUE,
        EMPTY,
        BROKEN
    }

    /** A key's place and its value. */
    public record Entry(Place place, Node value) {}

    private final Place place;
    private final Form form;
    private final String value;
    private final Map<String, Entry> entries;
    private final List<Node> items;
    private final Set<String> known = new LinkedHashSet<>();

    private Node(Place place, Form form, String value, Map<String, Entry> entries, List<Node> items) {
        this.place = place;
        this.form = form;
        this.value = value;
        this.entries = entries;
        this.items = items;
    }

    public static Node scalar(Place place, String value, boolean plain) {
        return new Node(place, plain && NOTHING.contains(value) ? Form.EMPTY : Form.VALUE, value, Map.of(), List.of());
    }

    public static Node list(Place place, List<Node> items) {
        return new Node(place, Form.LIST, "", Map.of(), items);
    }

    public static Node map(Place place, Map<String, Entry> entries) {
        return new Node(place, Form.MAP, "", entries, List.of());
    }

    /** What could not be read and has been reported. */
    static Node broken(Place place) {
        return new Node(place, Form.BROKEN, "", Map.of(), List.of());
    }

    /** Path of keys from the root, such as {@code housing[2].material}; empty for the root. */
    public String key() {
        return place.key();
    }

    /** Name of the file. */
    public String file() {
        return place.file();
    }

    /** Records a problem at this place. */
    public void problem(String message) {
        place.report(message);
    }

    /** Records a problem at the value of a key, or here when the key is missing. */
    public void problem(String name, String message) {
        Entry entry = entries.get(name);
        Node at = entry == null ? this : entry.value;
        at.place.named(path(name)).report(message);
    }

    /** True when the key is there with a value; counts as asking for it. */
    public boolean has(String name) {
        return child(name).isPresent();
    }

    /** Marks keys as known that are not read in this case. */
    public void knows(String... names) {
        known.addAll(List.of(names));
    }

    /** True when this is a group of keys. */
    public boolean isMap() {
        return form == Form.MAP;
    }

    /** What stands under a key, whatever it is; empty when the key is missing or has no value. */
    public Optional<Node> child(String name) {
        known.add(name);
        Entry entry = entries.get(name);
        return entry == null || entry.value.form == Form.EMPTY ? Optional.empty() : Optional.of(entry.value);
    }

    /** The value of this place as one line of text; empty after a problem. */
    public String text() {
        return scalar("a text").filter(t -> ScalarReader.isLine(this, t)).orElse("");
    }

    /** A required line of text; empty after a problem. */
    public String text(String name) {
        return required(name, "a text").map(Node::text).orElse("");
    }

    /** An optional line of text. */
    public String text(String name, String otherwise) {
        return optional(name, "a text").map(Node::text).orElse(otherwise);
    }

    /** An optional text of several lines; empty when missing. */
    public String note(String name) {
        Optional<String> text = optional(name, "a text").flatMap(n -> n.scalar("a text"));
        if (text.isPresent() && text.get().length() > LONGEST_NOTE) {
            problem(name, "longer than " + LONGEST_NOTE + " characters");
        }
        if (text.isPresent() && !ScalarReader.isVisible(child(name).orElseThrow(), text.get())) {
            return "";
        }
        return text.orElse("").strip();
    }

    /**
     * A required quantity.
     *
     * @param name key
     * @param dimension its dimension
     * @param min least value allowed, SI
     * @param max largest value allowed, SI
     * @return the value in SI units, NaN after a problem
     */
    public double quantity(String name, Dimension dimension, double min, double max) {
        return required(name, Expectation.of(dimension))
                .map(n -> n.quantity(dimension, min, max))
                .orElse(Double.NaN);
    }

    /** An optional quantity, see {@link #quantity(String, Dimension, double, double)}. */
    public double quantity(String name, Dimension dimension, double min, double max, double otherwise) {
        return optional(name, Expectation.of(dimension))
                .map(n -> n.quantity(dimension, min, max))
                .orElse(otherwise);
    }

    /** This place as a quantity, see {@link #quantity(String, Dimension, double, double)}. */
    public double quantity(Dimension dimension, double min, double max) {
        return ScalarReader.number(this, dimension, t -> Units.parse(t, dimension), min, max);
    }

    /** A required conductivity in S/m, also given as a resistivity or in %IACS; NaN after a problem. */
    public double conductivity(String name, double min, double max) {
        return required(name, "a conductivity such as 58 MS/m")
                .map(n -> ScalarReader.number(n, Dimension.CONDUCTIVITY, Units::parseConductivity, min, max))
                .orElse(Double.NaN);
    }

    /** A required whole number; min after a problem. */
    public int integer(String name, int min, int max) {
        return required(name, Expectation.whole(min, max))
                .map(n -> ScalarReader.integer(n, min, max))
                .orElse(min);
    }

    /** An optional whole number; min after a problem. */
    public int integer(String name, int min, int max, int otherwise) {
        return optional(name, Expectation.whole(min, max))
                .map(n -> ScalarReader.integer(n, min, max))
                .orElse(otherwise);
    }

    /** An optional choice between yes and no. */
    public boolean flag(String name, boolean otherwise) {
        return optionalChoice(name, Map.of("yes", true, "no", false)).orElse(otherwise);
    }

    /**
     * A required choice between words.
     *
     * @param name key
     * @param words the words allowed with their meaning
     * @return the meaning, empty after a problem
     */
    public <T> Optional<T> choice(String name, Map<String, T> words) {
        return required(name, Expectation.oneOf(words)).flatMap(n -> ScalarReader.choice(n, words));
    }

    /** An optional choice between words; empty when missing or after a problem. */
    public <T> Optional<T> optionalChoice(String name, Map<String, T> words) {
        return optional(name, Expectation.oneOf(words)).flatMap(n -> ScalarReader.choice(n, words));
    }

    /** A required group of keys; empty after a problem. */
    public Optional<Node> map(String name) {
        return required(name, "a group of keys").filter(Node::checkMap);
    }

    /** An optional group of keys; empty when missing or after a problem. */
    public Optional<Node> optionalMap(String name) {
        return optional(name, "a group of keys").filter(Node::checkMap);
    }

    /** A required list that is not empty; its items, whatever they are. */
    public List<Node> list(String name) {
        return required(name, "a list").map(Node::items).orElse(List.of());
    }

    /** An optional list that is not empty when it is there; its items, whatever they are. */
    public List<Node> optionalList(String name) {
        return optional(name, "a list").map(Node::items).orElse(List.of());
    }

    /** The groups of keys under this group, by name, such as the materials of a catalogue. */
    public Map<String, Node> members() {
        Map<String, Node> members = new LinkedHashMap<>();
        entries.forEach((name, entry) -> {
            known.add(name);
            if (entry.value.checkMap()) {
                members.put(name, entry.value);
            }
        });
        return members;
    }

    /** True for a group of keys; otherwise records the problem. */
    public boolean checkMap() {
        if (form != Form.MAP && form != Form.BROKEN) {
            problem("got " + describe() + ", needs a group of keys");
        }
        return form == Form.MAP;
    }

    /** Reports all unknown keys from here on down, in groups that were read. */
    public void finish() {
        items.forEach(Node::finish);
        if (known.isEmpty()) {
            return;
        }
        List<String> unused = new ArrayList<>(known);
        unused.removeAll(entries.keySet());
        entries.forEach((name, entry) -> {
            if (known.contains(name)) {
                entry.value.finish();
                return;
            }
            String hint = Texts.nearest(name, unused)
                    .or(() -> Texts.nearest(name, known))
                    .map(near -> ", did you mean \"" + near + "\"?")
                    .orElse(", known here: " + String.join(", ", known));
            entry.place.named(path(Texts.excerpt(name))).report("unknown key" + hint);
        });
    }

    private Optional<Node> required(String name, String needs) {
        Entry entry = entries.get(name);
        if (entry == null) {
            known.add(name);
            problem(name, "missing, needs " + needs);
            return Optional.empty();
        }
        return optional(name, needs);
    }

    private Optional<Node> optional(String name, String needs) {
        Entry entry = entries.get(name);
        if (entry != null && entry.value.form == Form.EMPTY) {
            problem(name, "no value, needs " + needs);
        }
        return child(name);
    }

    private List<Node> items() {
        if (form == Form.LIST && items.isEmpty()) {
            problem("the list is empty; give an entry or leave the key out");
            return List.of();
        }
        if (form != Form.LIST) {
            if (form != Form.BROKEN) {
                problem("got " + describe() + ", needs a list (lines that begin with \"- \")");
            }
            return List.of();
        }
        return items;
    }

    /** What is written here; empty after a problem, which tells what is needed. */
    Optional<String> scalar(String needs) {
        if (form == Form.VALUE) {
            return Optional.of(value.strip());
        }
        if (form != Form.BROKEN) {
            problem("got " + describe() + ", needs " + needs);
        }
        return Optional.empty();
    }

    private String describe() {
        return switch (form) {
            case MAP -> "a group of keys";
            case LIST -> "a list";
            case VALUE -> "\"" + Texts.excerpt(value) + "\"";
            case EMPTY, BROKEN -> "nothing";
        };
    }

    private String path(String name) {
        return place.key().isEmpty() ? name : place.key() + "." + name;
    }
}
