package eddyreach.model.yaml;

import eddyreach.units.Texts;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the tree of {@link Node}s from the events of the YAML parser. It reads events, not composed nodes, so that
 * depth, anchors, aliases and tags are refused with their place before anything is built from them.
 */
public final class YamlTree {

    private static final String KIND = "eddyreach";

    private static final int DEEPEST = 16;

    private final String file;
    private final Problems problems;
    private final Iterator<Event> events;

    private YamlTree(String file, Problems problems, Iterator<Event> events) {
        this.file = file;
        this.problems = problems;
        this.events = events;
    }

    /**
     * Opens a file of a kind.
     *
     * @param source the file
     * @param kind value of its key {@code eddyreach}: switch, study or materials
     * @param problems where to collect what is wrong
     * @return the root, a group of keys
     * @throws InputException when the file cannot be read, is no YAML in UTF-8 or is of another kind
     */
    public static Node open(SourceFile source, String kind, Problems problems) {
        Node root = read(source, problems);
        if (!root.isMap()) {
            root.problem("holds no keys, needs \"" + KIND + ": " + kind + "\" and what belongs to it");
            throw problems.exception();
        }
        Optional<Node> found = root.child(KIND);
        if (found.isEmpty()) {
            root.problem("the key \"" + KIND + ": " + kind + "\" that tells the kind of file is missing");
            throw problems.exception();
        }
        if (!found.get().text().equals(kind)) {
            found.get()
                    .problem("got a file of kind \"" + Texts.excerpt(found.get().text()) + "\", needs " + kind);
            throw problems.exception();
        }
        return root;
    }

    /**
     * The root of the only document.
     *
     * @throws InputException when the file cannot be read as YAML at all
     */
    public static Node read(SourceFile source, Problems problems) {
        String text = TextDecoder.decode(source.name(), source.content());
        LoadSettings settings = LoadSettings.builder().setLabel(source.name()).build();
        YamlTree tree = new YamlTree(
                source.name(), problems, new Parse(settings).parseString(text).iterator());
        try {
            return tree.document();
        } catch (MarkedYamlEngineException e) {
            Mark mark = e.getProblemMark().or(e::getContextMark).orElseThrow(() -> e);
            tree.place(mark, "").report(syntax(e.getProblem()));
            throw problems.exception();
        } catch (YamlEngineException e) {
            problems.add(new Problem(source.name(), 1, 1, "", "not valid YAML"));
            throw problems.exception();
        } catch (NumberFormatException e) {
            // the library counts such an escape as a number before it looks whether there is such a character
            problems.add(new Problem(
                    source.name(),
                    1,
                    1,
                    "",
                    "an escape such as \\UFFFFFFFF stands for no character; the last is \\U0010FFFF"));
            throw problems.exception();
        }
    }

    private Node document() {
        Node root = null;
        while (events.hasNext()) {
            Event event = events.next();
            switch (event.getEventId()) {
                case DocumentStart -> {
                    if (root != null) {
                        throw fatal(event, "", "a second document begins, a file holds one");
                    }
                }
                case Scalar, MappingStart, SequenceStart, Alias -> root = node(event, "", 0);
                default -> {
                    // stream and document marks carry nothing
                }
            }
        }
        if (root == null) {
            problems.add(new Problem(file, 1, 1, "", "the file is empty"));
            throw problems.exception();
        }
        return root;
    }

    private Node node(Event event, String key, int depth) {
        if (depth > DEEPEST) {
            throw fatal(event, key, "nested deeper than " + DEEPEST + " levels");
        }
        checkPlain(event, key);
        Place place = place(start(event), key);
        if (event instanceof ScalarEvent scalar) {
            return Node.scalar(place, scalar.getValue(), scalar.isPlain());
        }
        if (event.getEventId() == Event.ID.MappingStart) {
            return mapping(place, depth);
        }
        if (event.getEventId() == Event.ID.SequenceStart) {
            List<Node> items = new ArrayList<>();
            Event next = events.next();
            while (next.getEventId() != Event.ID.SequenceEnd) {
                items.add(node(next, key + "[" + (items.size() + 1) + "]", depth + 1));
                next = events.next();
            }
            return Node.list(place, items);
        }
        // an alias has been reported already; a broken node keeps the reading going without more complaints
        return Node.broken(place);
    }

    private Node mapping(Place group, int depth) {
        String key = group.key();
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        Event next = events.next();
        while (next.getEventId() != Event.ID.MappingEnd) {
            Mark mark = start(next);
            if (next instanceof ScalarEvent scalar) {
                checkPlain(next, key);
                String name = scalar.getValue();
                String path = key.isEmpty() ? Texts.excerpt(name) : key + "." + Texts.excerpt(name);
                Node value = node(events.next(), path, depth + 1);
                Place place = place(mark, path);
                Node.Entry first = entries.putIfAbsent(name, new Node.Entry(place, value));
                if (first != null) {
                    place.report("the key stands twice, first in line "
                            + first.place().line());
                }
            } else {
                place(mark, key).report("a key must be a word, not a list or a group of keys");
                node(next, key, depth + 1);
                node(events.next(), key, depth + 1);
            }
            next = events.next();
        }
        return Node.map(group, entries);
    }

    private void checkPlain(Event event, String key) {
        if (event instanceof AliasEvent
                || event instanceof NodeEvent n && n.getAnchor().isPresent()) {
            place(start(event), key).report("anchors (&) and aliases (*) are not accepted, write the value out");
        }
        Optional<String> tag = event instanceof ScalarEvent s
                ? s.getTag()
                : event instanceof CollectionStartEvent c ? c.getTag() : Optional.empty();
        if (tag.isPresent()) {
            place(start(event), key).report("tags (!) are not accepted, leave it out");
        }
    }

    private static Mark start(Event event) {
        return event.getStartMark().orElseThrow();
    }

    private Place place(Mark mark, String key) {
        return new Place(problems, file, mark.getLine() + 1, mark.getColumn() + 1, key);
    }

    private InputException fatal(Event event, String key, String message) {
        place(start(event), key).report(message);
        return problems.exception();
    }

    private static String syntax(String problem) {
        if (problem.contains("TAB")) {
            return "a tab in the indentation, use spaces";
        }
        if (problem.contains("mapping values are not allowed")) {
            return "a second \": \" in one line, or wrong indentation; put a text that holds \": \" in quotes";
        }
        if (problem.contains("expected <block end>") || problem.contains("expected <document start>")) {
            return "the indentation or a bracket does not fit to the lines before";
        }
        if (problem.contains("could not find expected ':'")) {
            return "a key without a colon and a value";
        }
        if (problem.contains("unexpected end of stream")) {
            return "the file ends within a quoted text";
        }
        return "not valid YAML (" + Texts.excerpt(problem) + ")";
    }
}
