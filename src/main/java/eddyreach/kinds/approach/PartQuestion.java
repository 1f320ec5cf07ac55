package eddyreach.kinds.approach;

import eddyreach.model.read.AlternativeSwitches;
import eddyreach.model.read.Library;
import eddyreach.model.read.Materials;
import eddyreach.model.read.MountReader;
import eddyreach.model.read.SwitchReader;
import eddyreach.model.read.TargetReader;
import eddyreach.model.values.Mount;
import eddyreach.model.values.OffsetLimit;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Place;
import eddyreach.model.yaml.Problem;
import eddyreach.model.yaml.Problems;
import eddyreach.study.MountFit;
import eddyreach.study.StudyHeader;
import eddyreach.study.StudyInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A study of one target that is asked in a few words instead of a file: by a command line, say. */
public final class PartQuestion {

    private static final String FILE = "question";
    private static final int POINTS = 61;

    private final Problems problems = new Problems();

    private PartQuestion() {}

    /**
     * Puts a question together, with the limits and the usual values of a study file. Problems carry the key concerned
     * and line 0.
     *
     * @param id id of the study
     * @param switchReference id or path of the switch
     * @param mountReference id or path of the mount that it stands in; empty for free air
     * @param words what is known of the target: material, thickness, shape, diameter and so on, as in a study file; a key in
     *     a group such as coating stands as coating.material
     * @param layers material and thickness of each layer, the one nearest to the switch first; empty for one layer
     *     given in the words
     * @param library where the switch and the materials are
     * @throws InputException with everything that is wrong
     */
    public static ApproachInput read(
            String id,
            String switchReference,
            Optional<String> mountReference,
            Map<String, String> words,
            List<Map<String, String>> layers,
            Library library) {
        return new PartQuestion().bind(id, switchReference, mountReference, words, layers, library);
    }

    private ApproachInput bind(
            String id,
            String switchReference,
            Optional<String> mountReference,
            Map<String, String> words,
            List<Map<String, String>> layers,
            Library library) {
        Materials materials = library.materials();
        Optional<SwitchModel> model = Optional.empty();
        try {
            model = Optional.of(SwitchReader.read(library.switchFile(switchReference), materials));
        } catch (InputException e) {
            e.problems().forEach(p -> problems.add(p.line() == 0 ? named("switch", p) : p));
        }
        Optional<SwitchModel> known = model;
        Node node = node(words, layers);
        TargetReader reader =
                new TargetReader(materials, model.map(SwitchModel::standardSide).orElse(Double.NaN));
        Optional<Target> target = reader.bindTarget(node);
        node.finish();
        if (model.isPresent() && target.isPresent()) {
            OffsetLimit.problem(target.get(), model.get()).ifPresent(p -> node.problem("offset", p));
        }
        Optional<Mount> mount = mountReference.flatMap(r -> mount(r, materials, known, library));
        if (mount.isPresent() && target.isPresent()) {
            MountFit.problems(mount.get(), target.get(), 0).forEach(p -> node.problem("mount", p));
        }
        problems.throwIfAny();
        SwitchModel asked = model.orElseThrow();
        return study(id, asked, target.orElseThrow(), materials)
                .in(mount)
                .withAlternatives(() -> AlternativeSwitches.of(asked, library, materials));
    }

    private Optional<Mount> mount(String reference, Materials materials, Optional<SwitchModel> model, Library library) {
        try {
            return MountReader.read(library.mountFile(reference), materials, model);
        } catch (InputException e) {
            e.problems().forEach(p -> problems.add(p.line() == 0 ? named("mount", p) : p));
            return Optional.empty();
        }
    }

    private static ApproachInput study(String id, SwitchModel model, Target target, Materials materials) {
        List<Target> targets = List.of(target);
        return new ApproachInput(
                new StudyHeader(
                        id,
                        target.label(),
                        "",
                        ApproachKind.APPROACH,
                        model,
                        TargetReader.standard(materials.get(Materials.STANDARD_STEEL), model),
                        StudyInput.defaultAccuracy(model)),
                targets,
                ApproachReader.usualFactors(targets, materials, model),
                0,
                StudyInput.defaultReach(model),
                POINTS,
                true);
    }

    private Node node(Map<String, String> words, List<Map<String, String>> layers) {
        Map<String, String> plain = new LinkedHashMap<>();
        Map<String, Map<String, String>> groups = new LinkedHashMap<>();
        words.forEach((key, text) -> {
            int dot = key.indexOf('.');
            if (dot < 0) {
                plain.put(key, text);
            } else {
                groups.computeIfAbsent(key.substring(0, dot), k -> new LinkedHashMap<>())
                        .put(key.substring(dot + 1), text);
            }
        });
        Map<String, Node.Entry> entries = entries("", plain);
        groups.forEach((key, members) -> {
            Place place = place(key);
            entries.put(key, new Node.Entry(place, Node.map(place, entries(key + ".", members))));
        });
        entries.put("name", entry("name", "part"));
        if (!layers.isEmpty()) {
            List<Node> items = new ArrayList<>();
            for (Map<String, String> layer : layers) {
                String key = "layers[" + (items.size() + 1) + "]";
                items.add(Node.map(place(key), entries(key + ".", layer)));
            }
            Place place = place("layers");
            entries.put("layers", new Node.Entry(place, Node.list(place, items)));
        }
        return Node.map(place(""), entries);
    }

    private Map<String, Node.Entry> entries(String path, Map<String, String> words) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        // a blank word says nothing, so it counts as missing
        words.forEach((key, text) -> {
            if (!text.isBlank()) {
                entries.put(key, entry(path + key, text));
            }
        });
        return entries;
    }

    private Node.Entry entry(String key, String text) {
        Place place = place(key);
        return new Node.Entry(place, Node.scalar(place, text, false));
    }

    private static Problem named(String key, Problem problem) {
        return new Problem(FILE, 0, 0, key, problem.file() + ": " + problem.message());
    }

    private Place place(String key) {
        return new Place(problems, FILE, 0, 0, key);
    }
}
