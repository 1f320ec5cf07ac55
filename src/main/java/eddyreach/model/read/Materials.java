package eddyreach.model.read;

import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import eddyreach.materials.PermeabilityRange;
import eddyreach.materials.Specimen;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.SourceFile;
import eddyreach.model.yaml.YamlTree;
import eddyreach.units.Dimension;
import eddyreach.units.Numbers;
import eddyreach.units.QuantityFormatException;
import eddyreach.units.Texts;
import eddyreach.units.Units;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The materials of a materials file by id, in the order of the file. */
public final class Materials {

    /** Id of the standard target's steel. */
    public static final String STANDARD_STEEL = "fe360";

    private static final String WINDING = "copper";
    private static final double MOST_CONDUCTIVE = 1e8;
    private static final double MOST_PERMEABLE = 1e6;

    /** Two values with a word between them. */
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s+to\\s+(.+)");

    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");

    private final Map<String, Material> byId;
    private final Map<String, FactorBand> bands;

    /** Ids by their other names, these without what does not count. */
    private final Map<String, String> names;

    private Materials(Map<String, Material> byId, Map<String, FactorBand> bands, Map<String, String> names) {
        this.byId = Collections.unmodifiableMap(byId);
        this.bands = Map.copyOf(bands);
        this.names = Map.copyOf(names);
    }

    /**
     * Reads a materials file.
     *
     * @throws InputException with everything that is wrong in it
     */
    public static Materials read(SourceFile source) {
        Problems problems = new Problems();
        Node root = YamlTree.open(source, "materials", problems);
        root.note("note");
        Map<String, Material> byId = new LinkedHashMap<>();
        Map<String, FactorBand> bands = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        root.map("materials").map(Node::members).ifPresent(members -> {
            members.forEach((id, node) -> {
                if (!ID.matcher(id).matches()) {
                    node.problem("an id has 1 to 40 small letters, digits and hyphens");
                }
                byId.put(id, bind(id, node));
                node.optionalMap("usual factor").ifPresent(band -> bands.put(id, bindBand(band)));
            });
            members.forEach((id, node) -> bindNames(id, node, byId, names));
        });
        root.finish();
        problems.throwIfAny();
        return new Materials(byId, bands, names);
    }

    /** Each name stands for one material only. */
    private static void bindNames(String id, Node node, Map<String, Material> byId, Map<String, String> names) {
        for (Node also : node.optionalList("also")) {
            String name = also.text();
            String taken = byId.containsKey(name) ? name : names.putIfAbsent(plain(name), id);
            if (taken != null) {
                also.problem("already stands for " + taken);
            }
        }
    }

    /** Without what does not count: small or capital letters, spaces, hyphens. */
    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
    }

    /** These, and others that come first where both know an id. */
    Materials with(Materials others) {
        Map<String, Material> all = new LinkedHashMap<>(byId);
        Map<String, FactorBand> usual = new LinkedHashMap<>(bands);
        // a band belongs to the material that it was given for
        usual.keySet().removeAll(others.byId.keySet());
        all.putAll(others.byId);
        usual.putAll(others.bands);
        Map<String, String> also = new LinkedHashMap<>(names);
        also.putAll(others.names);
        return new Materials(all, usual, also);
    }

    private static Material bind(String id, Node node) {
        String name = node.text("name");
        double conductivity = conductivity(node);
        double coefficient = node.quantity("temperature coefficient", Dimension.PER_TEMPERATURE, -0.02, 0.02, 0);
        Optional<PermeabilityRange> range = bindRange(node);
        double real = range.isPresent()
                ? range.get().middle()
                : node.has("permeability")
                                && RANGE.matcher(node.text("permeability")).matches()
                        ? 1
                        : node.quantity("permeability", Dimension.NONE, 1, MOST_PERMEABLE, 1);
        double loss = node.quantity("permeability loss", Dimension.NONE, 0, MOST_PERMEABLE, 0);
        // sources may be long
        String source = node.has("source") ? node.note("source") : node.text("source");
        if (id.equals(WINDING) && !(conductivity > 0 && real == 1 && loss == 0) && !Double.isNaN(conductivity)) {
            node.problem("the winding's copper must conduct and not be magnetic");
        }
        return new Material(id, name, conductivity, coefficient, real, loss, source, Specimen.PLAIN, range);
    }

    /** A permeability such as 10 to 300; empty where it is one number, or after a problem. */
    private static Optional<PermeabilityRange> bindRange(Node node) {
        Matcher m = RANGE.matcher(node.has("permeability") ? node.text("permeability") : "");
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            double low = Units.parse(m.group(1), Dimension.NONE);
            double high = Units.parse(m.group(2), Dimension.NONE);
            if (low >= 1 && low < high && high <= MOST_PERMEABLE) {
                return Optional.of(new PermeabilityRange(low, high));
            }
            node.problem(
                    "permeability",
                    low >= high && low >= 1 && high >= 1
                            ? "the range must rise, such as " + Numbers.shortest(Math.min(low, high), 6) + " to "
                                    + Numbers.shortest(low == high ? 2 * low : Math.max(low, high), 6)
                            : "out of range, needs 1 to " + Numbers.shortest(MOST_PERMEABLE, 7));
        } catch (QuantityFormatException e) {
            node.problem("permeability", e.getMessage());
        }
        return Optional.empty();
    }

    private static FactorBand bindBand(Node node) {
        double low = node.quantity("low", Dimension.NONE, 0, 2);
        double high = node.quantity("high", Dimension.NONE, 0, 2);
        if (low >= high) {
            node.problem("high", "must be above low, " + low);
        }
        return new FactorBand(low, high, node.note("source"));
    }

    private static double conductivity(Node node) {
        if (!node.has("resistivity")) {
            node.knows("resistivity");
            return node.conductivity("conductivity", 0, MOST_CONDUCTIVE);
        }
        if (node.has("conductivity")) {
            node.problem("resistivity", "stands beside conductivity, give one of the two");
        }
        return 1 / node.quantity("resistivity", Dimension.RESISTIVITY, 1 / MOST_CONDUCTIVE, 1e30);
    }

    /** The material of an id, or of one of its other names; an id comes first. */
    public Optional<Material> find(String id) {
        return Optional.ofNullable(byId.get(id))
                .or(() -> Optional.ofNullable(names.get(plain(id))).map(byId::get));
    }

    /** The trade's usual band of a material's correction factor, where there is one. */
    public Optional<FactorBand> usualFactor(String id) {
        return Optional.ofNullable(bands.get(id));
    }

    /**
     * The material of an id that must be there.
     *
     * @throws IllegalArgumentException with the nearest ids when it is not
     */
    public Material get(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(unknown(id)));
    }

    /** The material that a required key names; empty after a problem. */
    public Optional<Material> bind(Node node, String key) {
        String id = node.text(key);
        if (!id.isEmpty() && find(id).isEmpty()) {
            node.problem(key, unknown(id));
        }
        return find(id);
    }

    /** The material that a place names, say an item of a list; empty after a problem. */
    public Optional<Material> bind(Node node) {
        String id = node.text();
        if (!id.isEmpty() && find(id).isEmpty()) {
            node.problem(unknown(id));
        }
        return find(id);
    }

    private String unknown(String id) {
        Map<String, String> names = new TreeMap<>();
        byId.values().forEach(m -> names.put(m.name().toLowerCase(Locale.ROOT), m.id()));
        return "unknown material \"" + Texts.excerpt(id) + "\""
                + Texts.nearest(id, byId.keySet())
                        .or(() -> Texts.nearest(id, names.keySet()).map(names::get))
                        .map(near -> ", did you mean \"" + near + "\"?")
                        .orElse(", needs an id of shared/materials.yaml such as " + STANDARD_STEEL);
    }

    /** All ids in the order of the file. */
    public List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    /** All materials in the order of the file. */
    public List<Material> all() {
        return List.copyOf(byId.values());
    }
}
