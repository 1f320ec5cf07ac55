package eddyreach.kinds.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The group codes of the format (release 12): pairs, sections, tables, layers, entities, end. */
class DxfDrawingTest {

    private record Group(int code, String value) {}

    /** An entity or a table entry: its type and the groups up to the next one. */
    private record Item(String type, List<Group> groups) {

        String text(int code) {
            return groups.stream()
                    .filter(g -> g.code() == code)
                    .findFirst()
                    .orElseThrow()
                    .value();
        }

        double number(int code) {
            return Double.parseDouble(text(code));
        }

        boolean joins(double x0, double y0, double x1, double y1) {
            return near(x0, y0, 10) && near(x1, y1, 11) || near(x0, y0, 11) && near(x1, y1, 10);
        }

        private boolean near(double x, double y, int code) {
            return Math.abs(number(code) - x) < 1e-6 && Math.abs(number(code + 10) - y) < 1e-6;
        }
    }

    private static List<Group> groups(String text) {
        String[] lines = text.split("\r\n", -1);
        assertThat(lines.length % 2).as("pairs, and an end of the last line").isEqualTo(1);
        List<Group> groups = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            groups.add(new Group(Integer.parseInt(lines[i].strip()), lines[i + 1]));
        }
        return groups;
    }

    private static List<Item> section(List<Group> all, String name) {
        List<Item> items = new ArrayList<>();
        boolean inside = false;
        for (int i = 0; i < all.size(); i++) {
            Group g = all.get(i);
            if (g.code() == 0 && g.value().equals("SECTION")) {
                inside = all.get(i + 1).value().equals(name);
                i++;
            } else if (g.code() == 0 && g.value().equals("ENDSEC")) {
                inside = false;
            } else if (inside && g.code() == 0) {
                items.add(new Item(g.value(), new ArrayList<>()));
            } else if (inside && !items.isEmpty()) {
                items.get(items.size() - 1).groups().add(g);
            }
        }
        return items;
    }

    @Test
    void theSectionIsADrawingOfRelease12InMillimetres() throws IOException {
        MountResult result = SampleMounts.result();
        String text = result.presentation().drawings().get("section-odd.dxf").get();
        assertThat(text.chars()).allMatch(c -> c == '\r' || c == '\n' || c >= ' ' && c <= '~');
        List<Group> all = groups(text);
        assertThat(all.get(all.size() - 1)).isEqualTo(new Group(0, "EOF"));
        List<String> sections = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).equals(new Group(0, "SECTION"))) {
                sections.add(all.get(i + 1).value());
            }
        }
        assertThat(sections).containsExactly("HEADER", "TABLES", "BLOCKS", "ENTITIES");
        assertThat(all.stream().filter(g -> g.equals(new Group(0, "ENDSEC")))).hasSize(4);
        assertThat(all).containsSubsequence(new Group(9, "$ACADVER"), new Group(1, "AC1009"));

        List<Item> tables = section(all, "TABLES");
        assertThat(tables.stream().filter(t -> t.type().equals("TABLE"))).hasSize(3);
        assertThat(tables.stream().filter(t -> t.type().equals("ENDTAB"))).hasSize(3);
        Set<String> types = named(tables, "LTYPE");
        assertThat(types).containsExactlyInAnyOrder("CONTINUOUS", "CENTER");
        assertThat(tables.stream().filter(t -> t.type().equals("LAYER"))).allMatch(t -> types.contains(t.text(6)));
        Set<String> layers = named(tables, "LAYER");
        assertThat(layers).containsExactlyInAnyOrder("0", "SWITCH", "MOUNT", "TARGET", "AXIS", "DIMENSIONS", "TITLE");

        List<Item> entities = section(all, "ENTITIES");
        assertThat(entities).allMatch(e -> Set.of("LINE", "TEXT", "SOLID").contains(e.type()));
        assertThat(entities.stream().map(e -> e.text(8)).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder("SWITCH", "MOUNT", "TARGET", "AXIS", "DIMENSIONS", "TITLE");
        List<String> texts = entities.stream()
                .filter(e -> e.type().equals("TEXT"))
                .map(e -> e.text(1))
                .toList();
        assertThat(texts).contains("exploration, not for manufacture", "%%c14", "%%c30", "4", "9", "1.5");

        // the recess: from its edge in the surface down to its bottom, on both sides, and the bottom out of the bore
        MountCase odd = result.cases().get(2);
        double bore = odd.mount().wall().orElseThrow().bore() * 1e3 / 2;
        for (int side = -1; side <= 1; side += 2) {
            assertLine(entities, "MOUNT", side * 7, 1.5, side * 7, -2.5);
            assertLine(entities, "MOUNT", side * 7, -2.5, side * bore, -2.5);
            assertLine(entities, "MOUNT", side * bore, -2.5, side * bore, -7.5);
            assertLine(entities, "MOUNT", side * 15, 1.5, side * 15, -7.5);
        }
        double on = odd.targets().get(0).distance().on() * 1e3;
        double lowest = entities.stream()
                .filter(e -> e.text(8).equals("TARGET"))
                .mapToDouble(e -> Math.min(e.number(20), e.number(21)))
                .min()
                .orElseThrow();
        assertThat(lowest).isCloseTo(on, within(1e-6));
        assertBracket(
                result.presentation().drawings().get("section-bracket.dxf").get());
    }

    /** On the right the bracket ends at its edge, on the left it goes on. */
    private static void assertBracket(String text) {
        List<Item> entities = section(groups(text), "ENTITIES");
        assertLine(entities, "MOUNT", 6, -3, 6, -5);
        assertLine(entities, "MOUNT", -15, -3, -15, -5);
        assertThat(entities)
                .filteredOn(e -> e.text(8).equals("MOUNT"))
                .allMatch(e -> e.number(10) <= 6 + 1e-6 && e.number(11) <= 6 + 1e-6);
        assertThat(entities)
                .filteredOn(e -> e.type().equals("TEXT"))
                .extracting(e -> e.text(1))
                .contains("6", "straight edge 6 mm from the axis");
    }

    private static Set<String> named(List<Item> tables, String type) {
        return tables.stream()
                .filter(t -> t.type().equals(type))
                .map(t -> t.text(2))
                .collect(Collectors.toSet());
    }

    private static void assertLine(List<Item> entities, String layer, double x0, double y0, double x1, double y1) {
        assertThat(entities)
                .as("line on %s from %s %s to %s %s", layer, x0, y0, x1, y1)
                .anyMatch(e -> e.type().equals("LINE") && e.text(8).equals(layer) && e.joins(x0, y0, x1, y1));
    }
}
