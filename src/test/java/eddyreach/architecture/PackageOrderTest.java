package eddyreach.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A package may use only packages named above it in this list (see DEVELOPERS.md). */
class PackageOrderTest {

    private static final List<String> ORDER = List.of(
            "units",
            "numerics",
            "linalg",
            "materials",
            "geometry",
            "mesh",
            "fem",
            "closedform",
            "field",
            "surface",
            "coil",
            "oscillator",
            "switching",
            "model",
            "study",
            "report",
            "cli");

    private static String layer(JavaClass c) {
        String[] p = c.getPackageName().split("\\.");
        return p.length > 1 && p[0].equals("eddyreach") ? p[1] : null;
    }

    @Test
    void dependenciesRunOneWay() {
        JavaClasses classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("eddyreach");
        assertThat(classes.size()).isGreaterThan(5);
        List<String> wrong = new ArrayList<>();
        for (JavaClass c : classes) {
            assertThat(ORDER).as(c.getName()).contains(layer(c));
            for (Dependency d : c.getDirectDependenciesFromSelf()) {
                String to = layer(d.getTargetClass());
                if (to != null && ORDER.indexOf(to) > ORDER.indexOf(layer(c))) {
                    wrong.add(d.getDescription());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }
}
