package eddyreach.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the numbers that decide accuracy from the sources, with what their comments say of them. */
final class AccuracyReference {

    static final Path PAGE = Path.of("src/site/markdown/method/accuracy-policy.md");

    private static final Path SOURCES = Path.of("src/main/java/eddyreach");

    /** The classes that hold such numbers, and what they are about. */
    private static final Map<String, String> POLICY = new LinkedHashMap<>();

    static {
        POLICY.put("engine/core/AccuracyPolicy", "Error bars, searches, sampling, mounts and neighbours");
        POLICY.put(
                "field/axial/Resolution", "Wavenumbers and frequencies; the steps themselves are `Resolution.LADDER`");
        POLICY.put("field/axial/FieldAccuracy", "Self-checks, azimuthal orders, the join of switch and target");
        POLICY.put("model/values/Mount", "Where parts without an end are cut, in core radii");
        POLICY.put("model/values/OffsetLimit", "Which targets beside the axis are endless or not seen, in core radii");
    }

    /**
     * Classes with numbers that do not decide the accuracy of a result, and what those are instead. Looked at are field and engine
     * as a whole, and of the kinds what computes.
     */
    private static final Map<String, String> OTHER = Map.ofEntries(
            Map.entry("engine/assure/Regime", "where a reason says thin or thick"),
            Map.entry("engine/assure/TrialSwitches", "sizes of the switches that advice tries"),
            Map.entry("engine/assure/Explanation", "where an explanation calls a share small"),
            Map.entry("engine/assure/Advice", "what advice is worth giving"),
            Map.entry("engine/assure/SwitchCorners", "stands for no differential travel"),
            Map.entry("engine/assure/Assessor", "steps of the progress"),
            Map.entry("engine/assure/Allowances", "tolerance of a permeability"),
            Map.entry("engine/assure/Assurance", "working distances of common practice"),
            Map.entry("engine/core/ValidityLimits", "where a warning is due"),
            Map.entry("engine/core/ShapeLimits", "where a warning is due"),
            Map.entry("engine/core/FieldSampler", "grid of a picture"),
            Map.entry("engine/core/ResolutionLadder", "number of a step"),
            Map.entry("kinds/sweep/LayersRunner", "thicknesses that are told"),
            Map.entry("kinds/sweep/SizeRunner", "sizes that are told"),
            Map.entry("kinds/sweep/ThicknessRunner", "thicknesses that are told"),
            Map.entry("kinds/sweep/SweepCurve", "where a curve is called level"),
            Map.entry("kinds/sweep/SizeDerating", "factors of common practice"),
            Map.entry("kinds/series/Tolerances", "where a normal distribution is cut off, number of a draw"),
            Map.entry("kinds/series/Histogram", "bins of a picture"),
            Map.entry("kinds/series/UnitModel", "nodes of a fitted model; each series tells how far it is off"),
            Map.entry("kinds/series/SeriesRunner", "sizes of samples, batches and bins"),
            Map.entry("kinds/hysteresis/HysteresisRunner", "noise that a vibration never falls to"),
            Map.entry("kinds/principles/TankCurve", "number of quantities"),
            Map.entry("kinds/disturbance/DisturbanceRunner", "frequencies of a picture"),
            Map.entry("kinds/speed/Row", "nodes of a row; looked at by its error bar"),
            Map.entry("kinds/speed/SpeedRunner", "what is told and shown"),
            Map.entry("kinds/temperature/TemperatureRunner", "how a temperature is told, cap of a search"),
            Map.entry("kinds/recess/RecessRunner", "order of the cells, points of a drawn curve"),
            Map.entry("kinds/recess/RecessCell", "columns of a saved cell"),
            Map.entry("kinds/neighbour/Beats", "where a bound replaces the computed range, cap of a root finder"),
            Map.entry("kinds/neighbour/NeighbourSwitch", "one half"),
            Map.entry("kinds/neighbour/NeighbourRunner", "shares that are told"),
            Map.entry("kinds/neighbour/NeighbourShifts", "cap of a root finder, stands for no resonance"),
            Map.entry("kinds/background/BackgroundRunner", "free zone of common practice"),
            Map.entry("kinds/mount/WorstDamping", "corners of temperature and trim"),
            Map.entry("kinds/mount/MountCase", "limits of a verdict"),
            Map.entry("kinds/mount/MountTarget", "limit of a verdict"),
            Map.entry("kinds/mount/UsualRules", "rules of common practice"),
            Map.entry("kinds/mount/TrialPlan", "shims of a trial"),
            Map.entry("kinds/mount/SafeDimension", "grid of the machinist"),
            Map.entry("kinds/offaxis/OffAxisFinder", "cap of a root finder"),
            Map.entry("kinds/offaxis/ZoneRunner", "grid of a picture"),
            Map.entry("kinds/approach/ApproachRunner", "where a factor is told as outside the usual band"),
            Map.entry("kinds/approach/FineAmplitude", "points of a drawn curve"),
            Map.entry("kinds/approach/PartQuestion", "points of a drawn curve"));

    private static final Pattern SHOWN =
            Pattern.compile(".*(Reader|Charts?|Drawing|Presentation|Words|Page|Text|Json|Map|Table|Grid)");

    private static final Pattern NUMBER = Pattern.compile(
            "(?:/\\*\\*((?:(?!\\*/).)*)\\*/\\s*)?(?:public |private )?static final (?:double|int|List<Integer>|double(?:\\[\\])+|int\\[\\]) ([A-Z0-9_]+)\\s*=\\s*([^;]*);"
                    + "|// ---- ([^\\n]*)",
            Pattern.DOTALL);

    private AccuracyReference() {}

    static String text() throws IOException {
        StringBuilder out = new StringBuilder();
        out.append("# Numbers that decide accuracy\n\n");
        out.append("Made from the sources by `mvn -q test -Dtest=AccuracyReferenceTest -Drewrite=true`.\n");
        out.append(
                "What the error bars are made of: [engine](engine.md); how far they hold: [accuracy](../accuracy.md).\n");
        out.append(
                "Whoever builds a panel mesh chooses its `surface.Fineness`. Root finders and series of the other packages run to\n");
        out.append("rounding or state their tolerance beside them.\n");
        for (Map.Entry<String, String> c : POLICY.entrySet()) {
            out.append("\n## `").append(c.getKey().replace('/', '.')).append("`\n\n");
            out.append(c.getValue()).append(".\n\n| number | value | what it is |\n|---|---|---|\n");
            Matcher m = NUMBER.matcher(Files.readString(source(c.getKey())));
            while (m.find()) {
                if (m.group(2) != null) {
                    out.append("| `" + m.group(2) + "` | " + value(m.group(3)) + " | " + comment(m.group(1)) + " |\n");
                }
            }
        }
        return out.toString();
    }

    /** Numbers in field, engine and what computes in the kinds that neither a policy class holds nor {@link #OTHER} explains. */
    static List<String> strays() throws IOException {
        List<String> strays = new ArrayList<>();
        for (String name : classes()) {
            if (NUMBER.matcher(Files.readString(source(name))).results().anyMatch(r -> r.group(2) != null)
                    && !POLICY.containsKey(name)
                    && !OTHER.containsKey(name)) {
                strays.add(name);
            }
        }
        return strays;
    }

    /** Classes that are explained but hold no number any more. */
    static List<String> stale() throws IOException {
        List<String> stale = new ArrayList<>();
        for (String name : OTHER.keySet()) {
            if (!Files.exists(source(name))
                    || NUMBER.matcher(Files.readString(source(name))).results().noneMatch(r -> r.group(2) != null)) {
                stale.add(name);
            }
        }
        return stale;
    }

    private static List<String> classes() throws IOException {
        List<String> names = new ArrayList<>();
        for (String room : List.of("field", "engine", "kinds")) {
            try (Stream<Path> files = Files.walk(SOURCES.resolve(room))) {
                files.map(p -> SOURCES.relativize(p).toString().replace('\\', '/'))
                        .filter(p -> p.endsWith(".java"))
                        .map(p -> p.substring(0, p.length() - ".java".length()))
                        .filter(p -> !room.equals("kinds") || !SHOWN.matcher(p).matches())
                        .forEach(names::add);
            }
        }
        return names;
    }

    private static Path source(String name) {
        return SOURCES.resolve(name + ".java");
    }

    private static String value(String text) {
        return text.replaceAll("List\\.of\\((.*)\\)", "$1").replace("ResolutionLadder.FIRST + 1", "2");
    }

    private static String comment(String javadoc) {
        return javadoc == null
                ? ""
                : javadoc.replaceAll("\\n\\s*\\*", " ")
                        .replaceAll("\\{@(?:link|code) #?([^}]*)\\}", "`$1`")
                        .replaceAll("<[^>]*>", "")
                        .replace("|dZ|", "abs(dZ)")
                        .replaceAll("\\s+", " ")
                        .strip();
    }
}
