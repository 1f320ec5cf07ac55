package eddyreach.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A package may use only packages named above it in this list (see DEVELOPERS.md), and none grows beyond what one can take in. */
class PackageOrderTest {

    private static final int MOST_CLASSES = 30;

    private static final List<String> ORDER = List.of(
            "units",
            "numerics",
            "linalg",
            "materials",
            "geometry",
            "mesh",
            "fem",
            "closedform",
            "field.axial",
            "field.orders",
            "field.join",
            "field.targets",
            "surface",
            "coil",
            "oscillator",
            "switching",
            "model.yaml",
            "model.values",
            "model.read",
            "engine.core",
            "engine.mounted",
            "engine.assure",
            "report.words",
            "report.draw",
            "report.page",
            "study",
            "kinds.approach",
            "kinds.sweep",
            "kinds.offaxis",
            "kinds.mount",
            "kinds.background",
            "kinds.recess",
            "kinds.neighbour",
            "kinds.temperature",
            "kinds.speed",
            "kinds.series",
            "kinds.hysteresis",
            "kinds.principles",
            "kinds.disturbance",
            "studies",
            "proof",
            "cli");

    private static final JavaClasses CLASSES = Program.CLASSES;

    /** The package without the program's name in front; empty for what is not ours. */
    private static String layer(JavaClass c) {
        String name = c.getBaseComponentType().getPackageName();
        return name.startsWith("eddyreach.") ? name.substring("eddyreach.".length()) : "";
    }

    @Test
    void dependenciesRunOneWay() {
        assertThat(CLASSES.size()).isGreaterThan(5);
        List<String> wrong = new ArrayList<>();
        for (JavaClass c : CLASSES) {
            assertThat(ORDER).as(c.getName()).contains(layer(c));
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String to = layer(d.getTargetClass());
                if (!to.isEmpty() && ORDER.indexOf(to) > ORDER.indexOf(layer(c))) {
                    wrong.add(d.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("eddyreach.(**)").should().beFreeOfCycles().check(CLASSES);
        slices().matching("eddyreach.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    /** A kind of study knows no other, but for those that are about the same mount. */
    @Test
    void roomsAreIndependent() {
        Map<String, List<String>> allowed =
                Map.of("kinds.background", List.of("kinds.mount"), "kinds.recess", List.of("kinds.mount"));
        List<String> wrong = new ArrayList<>();
        for (JavaClass c : CLASSES) {
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String from = layer(c);
                String to = layer(d.getTargetClass());
                if (from.startsWith("kinds.")
                        && to.startsWith("kinds.")
                        && !to.equals(from)
                        && !allowed.getOrDefault(from, List.of()).contains(to)) {
                    wrong.add(d.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void packagesStaySmall() {
        Map<String, Integer> count = new TreeMap<>();
        for (JavaClass c : CLASSES) {
            if (c.isTopLevelClass() && !c.getSimpleName().equals("package-info")) {
                count.merge(layer(c), 1, Integer::sum);
            }
        }
        count.values().removeIf(n -> n <= MOST_CLASSES);
        assertThat(count).isEmpty();
    }
}
