package eddyreach.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaConstructorCall;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whatever may end in one of the failures that belong to a field problem or to a switch says so: each public method and constructor that can
 * reach the place where one is thrown, through whatever calls, names it with {@code @throws}.
 */
class DocumentedFailuresTest {

    private static final Set<String> FAILURES = Set.of(
            "SelfCheckException",
            "SingularMatrixException",
            "MemoryException",
            "NoTrimException",
            "NoOscillationException");

    private static final Path SOURCES = Path.of("src/main/java");

    private static final JavaClasses CLASSES = Program.CLASSES;

    private final Map<JavaCodeUnit, Set<String>> thrown = new HashMap<>();

    @Test
    void eachIsNamed() throws IOException {
        List<JavaCodeUnit> units = CLASSES.stream()
                .flatMap(c -> c.getCodeUnits().stream())
                .filter(u -> !u.getOwner().getSimpleName().endsWith("Exception"))
                .toList();
        units.forEach(this::addOwn);
        boolean more = true;
        while (more) {
            more = false;
            for (JavaCodeUnit unit : units) {
                more |= addCalled(unit);
            }
        }
        assertThat(thrown).hasSizeGreaterThan(50);
        Set<String> missing = new TreeSet<>();
        for (JavaCodeUnit unit : thrown.keySet()) {
            if (isPublic(unit) && declarations(unit).isEmpty()) {
                Set<String> undocumented = new TreeSet<>(thrown.get(unit));
                undocumented.removeIf(f -> documented(unit, f));
                undocumented.forEach(f -> missing.add(unit.getFullName() + " " + f));
            }
        }
        assertThat(missing).isEmpty();
    }

    private void addOwn(JavaCodeUnit unit) {
        for (JavaConstructorCall call : unit.getConstructorCallsFromSelf()) {
            String name = call.getTargetOwner().getSimpleName();
            if (FAILURES.contains(name)) {
                // a vanishing pivot is a failed self-check
                thrown.computeIfAbsent(unit, u -> new TreeSet<>())
                        .add(name.equals("SingularMatrixException") ? "SelfCheckException" : name);
            }
        }
    }

    /** What is thrown by the methods that a method calls; what implements a method of an interface speaks for that too. */
    private boolean addCalled(JavaCodeUnit unit) {
        Set<String> called = new TreeSet<>();
        for (JavaAccess<?> access : unit.getAccessesFromSelf()) {
            if (access.getTarget() instanceof AccessTarget.CodeUnitAccessTarget target) {
                target.resolveMember().map(thrown::get).ifPresent(called::addAll);
            }
        }
        called.addAll(thrown.getOrDefault(unit, Set.of()));
        boolean more = !called.isEmpty()
                && thrown.computeIfAbsent(unit, u -> new TreeSet<>()).addAll(called);
        for (JavaCodeUnit declaration : declarations(unit)) {
            more |= !called.isEmpty()
                    && thrown.computeIfAbsent(declaration, u -> new TreeSet<>()).addAll(called);
        }
        return more;
    }

    /** The methods of the program's own interfaces and superclasses that a method overrides. */
    private static Set<JavaCodeUnit> declarations(JavaCodeUnit unit) {
        Set<JavaCodeUnit> found = new LinkedHashSet<>();
        if (unit instanceof JavaMethod method && !method.getModifiers().contains(JavaModifier.STATIC)) {
            Stream.concat(
                            unit.getOwner().getAllRawInterfaces().stream(),
                            unit.getOwner().getAllRawSuperclasses().stream())
                    .filter(c -> c.getPackageName().startsWith("eddyreach"))
                    .flatMap(c -> c.getMethods().stream())
                    .filter(m -> m.getName().equals(method.getName())
                            && m.getRawParameterTypes().equals(method.getRawParameterTypes()))
                    .forEach(found::add);
        }
        return found;
    }

    private static boolean isPublic(JavaCodeUnit unit) {
        JavaClass owner = unit.getOwner();
        return unit.getModifiers().contains(JavaModifier.PUBLIC)
                && owner.getModifiers().contains(JavaModifier.PUBLIC)
                // the command line shows every failure
                && !owner.getPackageName().startsWith("eddyreach.cli");
    }

    /** Whether one of the comments above a method of this name names the failure; overloads stand for each other. */
    private static boolean documented(JavaCodeUnit unit, String failure) {
        JavaClass top = unit.getOwner();
        while (top.getEnclosingClass().isPresent()) {
            top = top.getEnclosingClass().get();
        }
        Path file = SOURCES.resolve(top.getName().replace('.', '/') + ".java");
        String name = unit instanceof JavaConstructor ? unit.getOwner().getSimpleName() : unit.getName();
        Pattern commented = Pattern.compile(
                "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:@\\w+(?:\\([^)]*\\))?\\s*)*(?:[\\w<>,?\\[\\]. ]+ )?" + name
                        + "\\s*[({]",
                Pattern.DOTALL);
        List<String> comments = new ArrayList<>();
        try {
            Matcher m = commented.matcher(Files.readString(file));
            while (m.find()) {
                comments.add(m.group(1));
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        String either = failure.equals("SelfCheckException") ? "(SelfCheck|SingularMatrix)Exception" : failure;
        return comments.stream().anyMatch(c -> c.matches("(?s).*@throws " + either + "\\b.*"));
    }
}
