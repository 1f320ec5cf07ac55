package eddyreach.model.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.Layer;
import eddyreach.model.values.Target;
import eddyreach.model.yaml.InputException;
import eddyreach.model.yaml.Node;
import eddyreach.model.yaml.Problems;
import eddyreach.model.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Targets that are more than a flat stack of layers. */
class ShapesTest {

    private static final double MM = 1e-3;
    private static final Materials MATERIALS = ModelFiles.materials();

    @TempDir
    private Path folder;

    private List<Target> read(String targets) {
        Problems problems = new Problems();
        Node root = YamlTree.open(
                ModelFiles.write(folder, "t.yaml", "eddyreach: study\ntargets:\n" + targets), "study", problems);
        List<Target> bound = new TargetReader(MATERIALS, 18e-3).bindAll(root.list("targets"));
        root.finish();
        problems.throwIfAny();
        return bound;
    }

    private String errors(String targets) {
        InputException e = catchThrowableOfType(InputException.class, () -> read(targets));
        return ModelFiles.message(e, folder);
    }

    private static Section section(double r0, double r1, double z0, double z1) {
        return new Section(r0 * MM, r1 * MM, z0 * MM, z1 * MM);
    }

    private static void sections(Target t, Section... expected) {
        assertThat(t.parts()).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            Section s = t.parts().get(i).section();
            Section e = expected[i];
            assertThat(new double[] {s.r0(), s.r1(), s.z0(), s.z1()})
                    .containsExactly(new double[] {e.r0(), e.r1(), e.z0(), e.z1()}, within(1e-15));
        }
    }

    private static double volume(List<Part> parts) {
        return parts.stream()
                .map(Part::section)
                .mapToDouble(s -> Math.PI * (s.r1() * s.r1() - s.r0() * s.r0()) * (s.z1() - s.z0()))
                .sum();
    }

    @Test
    void roundBodies() {
        List<Target> t = read("""
                - {name: washer, shape: washer, outer: 20 mm, inner: 10 mm, thickness: 2 mm, material: fe360}
                - {name: slit, shape: washer, outer: 20 mm, inner: 10 mm, thickness: 2 mm, material: fe360, slit: yes}
                - {name: tube, shape: tube, outer: 20 mm, wall: 1 mm, length: 30 mm, material: brass}
                - {name: tube-inner, shape: tube, outer: 20 mm, inner: 18 mm, length: 30 mm, material: brass, slit: no}
                - {name: slug, shape: cylinder, diameter: 8 mm, length: 4 mm, material: aluminium}
                - {name: ball, shape: sphere, diameter: 10 mm, material: fe360}
                - {name: screw, shape: screw, head diameter: 13 mm, head height: 5 mm, shank diameter: 8 mm,
                   shank length: 30 mm, material: fe360}
                - {name: point, shape: screw, head diameter: 13 mm, head height: 5 mm, shank diameter: 8 mm,
                   shank length: 30 mm, material: fe360, point first: yes}
                """);
        assertThat(t.get(0).parts().get(0).section()).isEqualTo(section(5, 10, 0, 2));
        assertThat(t.get(0).label()).isEqualTo("mild steel Fe 360 washer 20 mm / 10 mm by 2 mm");
        assertThat(t.get(0).parts().get(0).slit()).isFalse();
        assertThat(t.get(1).parts().get(0).slit()).isTrue();
        assertThat(t.get(0).actsAs(t.get(1))).isFalse();
        assertThat(t.get(2).parts().get(0).section()).isEqualTo(section(9, 10, 0, 30));
        Section inner = t.get(3).parts().get(0).section();
        assertThat(inner.r0()).isCloseTo(t.get(2).parts().get(0).section().r0(), within(1e-15));
        assertThat(t.get(4).parts().get(0).section()).isEqualTo(section(0, 4, 0, 4));
        assertThat(t.get(5).body()).isEqualTo(new Body.Ball(10e-3, MATERIALS.get("fe360")));
        assertThat(t.get(5).parts()).isEmpty();
        assertThat(t.get(5).thickness()).isEqualTo(10e-3);
        sections(t.get(6), section(0, 6.5, 0, 5), section(0, 4, 5, 35));
        assertThat(t.get(6).parts()).extracting(Part::name).containsExactly("screw head", "screw shank");
        sections(t.get(7), section(0, 4, 0, 30), section(0, 6.5, 30, 35));
        assertThat(t.get(7).radius()).isEqualTo(6.5e-3);
    }

    /** Plated parts keep their size: core and plating fill the same space, without overlap, and every side is covered. */
    @Test
    void platingAllOver() {
        List<String> shapes = List.of(
                "shape: washer, outer: 20 mm, inner: 10 mm, thickness: 2 mm",
                "shape: tube, outer: 20 mm, inner: 10 mm, length: 2 mm, slit: yes",
                "shape: cylinder, diameter: 8 mm, length: 2 mm",
                "shape: disc, diameter: 8 mm, thickness: 2 mm",
                "shape: screw, head diameter: 13 mm, head height: 5 mm, shank diameter: 8 mm, shank length: 9 mm",
                "shape: screw, head diameter: 13 mm, head height: 5 mm, shank diameter: 8 mm, shank length: 9 mm,"
                        + " point first: yes");
        for (String shape : shapes) {
            Target bare = read("- {name: a, material: fe360, " + shape + "}\n").get(0);
            Target plated = read("- {name: a, material: fe360, coating: {material: zinc, thickness: 0.1 mm}, " + shape
                            + "}\n")
                    .get(0);
            List<Part> parts = plated.parts();
            assertThat(volume(parts)).as(shape).isCloseTo(volume(bare.parts()), within(1e-15));
            for (Part p : parts) {
                for (Part q : parts) {
                    assertThat(p != q && p.section().overlaps(q.section()))
                            .as(shape + ": " + p.name() + " and " + q.name())
                            .isFalse();
                }
                boolean outside = p.section().z0() == 0
                        || p.section().z1() == plated.thickness()
                        || p.section().r1() == plated.radius();
                assertThat(outside && p.material().id().equals("fe360"))
                        .as(shape + ": " + p.name())
                        .isFalse();
                assertThat(p.slit()).isEqualTo(shape.contains("slit"));
            }
            assertThat(plated.thickness()).isEqualTo(bare.thickness());
            assertThat(plated.radius()).isEqualTo(bare.radius());
            assertThat(plated.front().id()).isEqualTo("zinc");
            assertThat(plated.label()).endsWith("zinc 0.1 mm all over");
        }
    }

    @Test
    void sheetsWithOpenings() {
        List<Target> t = read("""
                - {name: long, shape: rectangle, width: 20 mm, height: 30 mm, thickness: 1 mm, material: brass}
                - {name: holes, open area: 40 %, material: aluminium}
                - {name: mesh, shape: plate, mesh: {wire: 0.2 mm, pitch: 1 mm}, material: copper}
                - {name: cap, layers: [{material: plastic, thickness: 1 mm}, {material: fe360, thickness: 2 mm}]}
                """);
        assertThat(t.get(0).radius()).isCloseTo(Math.sqrt(600 / Math.PI) * MM, within(1e-12));
        assertThat(t.get(1).layers().get(0).material().conductivity(20)).isCloseTo(35e6 * 0.6 / 1.4, within(1e-3));
        assertThat(t.get(1).label()).isEqualTo("aluminium (40 % open), 1 mm");
        Layer mesh = t.get(2).layers().get(0);
        assertThat(mesh.thickness() * mesh.material().conductivity(20))
                .isCloseTo(Math.PI / 4 * 0.04e-6 * 58e6 / 1e-3, within(1e-6));
        assertThat(t.get(3).front().id()).isEqualTo("fe360");
        assertThat(t.get(3).thickness()).isEqualTo(3e-3);
    }

    @Test
    void ringsInSteps() {
        Target t = read("""
                - name: pulley
                  shape: rings
                  rings:
                    - {material: brass, inner: 8 mm, outer: 24 mm, from: 2 mm, to: 6 mm}
                    - {material: fe360, outer: 8 mm, from: 0 mm, to: 10 mm}
                """).get(0);
        assertThat(t.front().id()).as("the nearest").isEqualTo("fe360");
        sections(t, section(0, 4, 0, 10), section(4, 12, 2, 6));
    }

    @Test
    void whatCannotBe() {
        assertThat(errors("""
                - {name: a, shape: washer, outer: 10 mm, inner: 20 mm, thickness: 2 m, material: fe360}
                - {name: b, shape: tube, outer: 10 mm, wall: 6 mm, length: 3 mm, material: fe360}
                - {name: c, shape: tube, outer: 10 mm, length: 3 mm, material: fe360}
                - {name: d, shape: cylinder, diameter: 8 mm, length: 4 mm, slit: yes, material: fe360}
                - {name: e, shape: washer, outer: 20 mm, inner: 10 mm, thickness: 1 mm, material: fe360,
                   coating: {material: zinc, thickness: 0.5 mm}}
                - {name: f, coating: {material: zinc, thickness: 8 um}, material: fe360}
                - {name: g, material: fe360, open area: 30 %}
                - {name: h, material: aluminium, open area: 80 %}
                - {name: i, material: copper, mesh: {wire: 1 mm, pitch: 0.5 mm}}
                - {name: j, shape: sphere, diameter: 10 mm, thickness: 1 mm, material: fe360}
                - {name: k, shape: screw, head diameter: 8 mm, head height: 5 mm, shank diameter: 8 mm,
                   shank length: 30 mm, material: fe360}
                - {name: l, material: fe360, mesh: {wire: 0.1 mm, pitch: 1 mm}, thickness: 1 mm}
                - {name: n, shape: rectangle, width: 10 mm, height: 50 mm, thickness: 1 mm, material: brass}
                - {name: m, shape: washer, outer: 20 mm, inner: 10 mm, thickness: 1 mm, material: fe360, slit: maybe}
                """)).isEqualTo("""
                t.yaml:3:49 targets[1].inner: 20 mm must be smaller than outer, 10 mm: nothing is left between them
                t.yaml:3:67 targets[1].thickness: 2 m is out of range, needs 1 nm to 1 m
                t.yaml:4:46 targets[2].wall: 6 mm is too thick for an outer diameter of 10 mm, needs less than 5 mm;\
                 a solid rod is shape: cylinder
                t.yaml:5:3 targets[3].inner: missing, needs the inner diameter, or wall for the thickness of the wall
                t.yaml:6:66 targets[4].slit: a slit stops the current round a hole, but this shape is solid; needs\
                 a washer or a tube
                t.yaml:8:41 targets[5].coating.thickness: 0.5 mm on every side leaves nothing of the part, needs less\
                 than 0.5 mm; the part's sizes include its coating
                t.yaml:9:22 targets[6].coating: goes only with the shapes disc, washer, tube, cylinder and screw
                t.yaml:10:23 targets[7].material: mild steel Fe 360 is magnetic: no rule here covers magnetic sheets\
                 with holes or magnetic mesh, needs a metal that is not magnetic
                t.yaml:11:45 targets[8].open area: 80 % is out of range, needs 0 % to 50 %
                t.yaml:12:57 targets[9].mesh.pitch: 0.5 mm from wire to wire leaves no opening between wires of 1 mm,\
                 needs more
                t.yaml:13:56 targets[10].thickness: goes only with the shapes standard, plate, disc, square, rectangle\
                 and washer
                t.yaml:14:83 targets[11].shank diameter: 8 mm must be smaller than the head diameter, 8 mm
                t.yaml:16:23 targets[12].material: mild steel Fe 360 is magnetic: no rule here covers magnetic sheets\
                 with holes or magnetic mesh, needs a metal that is not magnetic
                t.yaml:16:76 targets[12].thickness: stands beside mesh, whose wire is its thickness
                t.yaml:17:53 targets[13].height: 50 mm is more than 4 times the other side, 10 mm: no disc stands for so\
                 long a strip; if both sides are far wider than the switch, shape: plate does
                t.yaml:18:96 targets[14].slit: got "maybe", needs no or yes""");
    }

    @Test
    void ringsThatCannotBe() {
        assertThat(errors("""
                - name: a
                  shape: rings
                  rings:
                    - {material: fe360, outer: 10 mm, from: 0 mm, to: 5 mm}
                    - {material: brass, inner: 8 mm, outer: 20 mm, from: 2 mm, to: 6 mm}
                    - {material: brass, inner: 30 mm, outer: 40 mm, from: 2 mm, to: 6 mm}
                - name: b
                  shape: rings
                  material: zinc
                  rings:
                    - {material: fe360, outer: 10 mm, from: 1 mm, to: 5 mm}
                    - {material: brass, inner: 10 mm, outer: 20 mm, from: 1 mm, to: 5 mm, slit: yes}
                - name: c
                  shape: rings
                  rings:
                    - {material: fe360, outer: 10 mm, from: -1 mm, to: 5 mm}
                    - {material: fe360, inner: 10 mm, outer: 10 mm, from: 5 mm, to: 5 mm}
                    - {material: fe360, outer: 10 mm, from: 5 mm, to: 6 mm, slit: yes}
                """)).isEqualTo("""
                t.yaml:7:7 targets[1].rings[2]: stands in the place of ring 1: rings must not overlap
                t.yaml:8:7 targets[1].rings[3]: touches no other ring, the nearest being ring 2, 5 mm away; fill the\
                 gap, with a ring of air if nothing is there
                t.yaml:11:13 targets[2].material: stands beside rings, give it in each ring
                t.yaml:13:5 targets[2].rings: the nearest begins at 1 mm: one must begin at 0, from where the distance\
                 counts
                t.yaml:14:81 targets[2].rings[2].slit: is bridged by ring 1, which touches it and is closed
                t.yaml:18:45 targets[3].rings[1].from: -1 mm is out of range, needs 0 mm to 1 m
                t.yaml:19:32 targets[3].rings[2].inner: 10 mm must be smaller than outer, 10 mm
                t.yaml:19:69 targets[3].rings[2].to: 5 mm must be larger than from, 5 mm
                t.yaml:20:67 targets[3].rings[3].slit: a slit stops the current round a hole, but this ring is solid;\
                 needs inner above 0""");
    }
}
