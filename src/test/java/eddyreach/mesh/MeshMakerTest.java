package eddyreach.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.geometry.Section;
import eddyreach.mesh.MeshMaker.Fineness;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshMakerTest {

    private static final double MM = 1e-3;
    private static final double SCALE = 7 * MM;
    private static final Fineness FINE = new Fineness(4, 0.02, 0.7, 3, 0.6, 20);

    /** What is left between two rows of elements may be as long as this times the element that would follow. */
    private static final double REST = 1.4;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void randomParts(long seed) {
        Random random = new Random(seed);
        MeshMaker maker = new MeshMaker(FINE, SCALE);
        List<Section> sections = new ArrayList<>();
        double[] skin = new double[5];
        double outer = SCALE;
        double bottom = 0;
        double top = 0;
        for (int i = 0; i < skin.length; i++) {
            double r0 = random.nextInt(3) == 0 ? 0 : random.nextDouble() * 10 * MM;
            double z0 = (random.nextDouble() - 0.5) * 20 * MM;
            Section s = new Section(r0, r0 + random.nextDouble() * 5 * MM, z0, z0 + random.nextDouble() * 5 * MM);
            skin[i] = i == 0 ? Double.POSITIVE_INFINITY : Math.pow(10, -6 + 3 * random.nextDouble());
            maker.add(s, skin[i]);
            sections.add(s);
            outer = Math.max(outer, s.r1());
            bottom = Math.min(bottom, s.z0());
            top = Math.max(top, s.z1());
        }
        Section smooth = new Section(2 * MM, 3 * MM, -4 * MM, -1 * MM);
        maker.addSmooth(smooth);
        sections.add(smooth);
        TensorMesh mesh = maker.build();

        assertThat(mesh.r().end(0)).isZero();
        assertThat(mesh.r().end(mesh.r().elements())).isEqualTo(outer + FINE.far() * SCALE);
        assertThat(mesh.z().end(0)).isEqualTo(Math.min(bottom, smooth.z0()) - FINE.far() * SCALE);
        assertThat(mesh.z().end(mesh.z().elements())).isEqualTo(top + FINE.far() * SCALE);
        List<Double> facesR = new ArrayList<>();
        List<Double> facesZ = new ArrayList<>();
        for (Section s : sections) {
            facesR.add(s.r0());
            facesR.add(s.r1());
            facesZ.add(s.z0());
            facesZ.add(s.z1());
        }
        for (int i = 0; i < facesR.size(); i++) {
            assertThat(vertex(mesh.r(), facesR.get(i))).isNotNegative();
            assertThat(vertex(mesh.z(), facesZ.get(i))).isNotNegative();
        }
        for (int i = 0; i < skin.length; i++) {
            // where the stretch to the next face is short, one element may close it at once: growth times longer
            double wanted = FINE.skin() * skin[i];
            Axis z = mesh.z();
            assertThat(z.length(vertex(z, sections.get(i).z0()))).isLessThanOrEqualTo(REST * FINE.growth() * wanted);
            assertThat(z.length(vertex(z, sections.get(i).z1()) - 1))
                    .isLessThanOrEqualTo(REST * FINE.growth() * wanted);
        }
        growth(mesh.r(), facesR);
        growth(mesh.z(), facesZ);
    }

    /** Within a stretch between faces no element is longer than growth allows, beside its neighbour. */
    private static void growth(Axis axis, List<Double> faces) {
        for (int e = 1; e < axis.elements(); e++) {
            double end = axis.end(e);
            if (faces.stream().noneMatch(f -> Math.abs(f - end) < 1e-9 * SCALE)) {
                double ratio = axis.length(e) / axis.length(e - 1);
                // the last gap may be closed by one element where two rows of unequal size meet
                assertThat(Math.max(ratio, 1 / ratio))
                        .as("at %s", end)
                        .isLessThanOrEqualTo(REST * FINE.growth() * FINE.growth());
            }
        }
    }

    /** A conductor alone: its first elements are as small as asked on every face, and they grow by the ratio asked. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 30e-6, 200e-6, 1e-3, 1})
    void elementsAtTheSurfaceOfAConductor(double skin) {
        Section disc = new Section(0, 10 * MM, 0, 1 * MM);
        MeshMaker maker = new MeshMaker(FINE, SCALE);
        maker.add(disc, skin);
        TensorMesh mesh = maker.build();
        double corner = FINE.corner() * SCALE;
        double inside = Math.min(corner, FINE.skin() * skin);
        Axis r = mesh.r();
        Axis z = mesh.z();
        int rim = vertex(r, disc.r1());
        int front = vertex(z, 0);
        int back = vertex(z, disc.z1());
        for (double length : new double[] {z.length(front), z.length(back - 1), r.length(rim - 1)}) {
            assertThat(length).isCloseTo(inside, within(1e-9 * inside));
        }
        for (double length : new double[] {z.length(front - 1), z.length(back), r.length(rim)}) {
            assertThat(length).isCloseTo(corner, within(1e-9 * corner));
        }
        assertThat(r.length(rim - 2) / r.length(rim - 1)).isCloseTo(FINE.growth(), within(1e-6));
        assertThat(z.length(back + 1) / z.length(back)).isCloseTo(FINE.growth(), within(1e-6));
    }

    @Test
    void facesCloserThanRoundingAreOne() {
        MeshMaker maker = new MeshMaker(FINE, SCALE);
        maker.add(new Section(0, 5 * MM, -3 * MM, -1 * MM), 1 * MM);
        maker.add(new Section(0, Math.nextUp(5 * MM), Math.nextUp(-1 * MM), 0), 1 * MM);
        maker.add(new Section(5 * MM + 1e-15, 6 * MM, -1e-15, 2 * MM), 1 * MM);
        TensorMesh mesh = maker.build();
        for (Axis axis : List.of(mesh.r(), mesh.z())) {
            for (int e = 0; e < axis.elements(); e++) {
                assertThat(axis.length(e)).isGreaterThan(1e-9 * SCALE);
            }
        }
        assertThat(vertex(mesh.r(), 5 * MM)).isPositive();
        assertThat(vertex(mesh.z(), 0)).isPositive();
    }

    @Test
    void foilOf50NanometresOnADiscOf10Millimetres() {
        double t = 50e-9;
        MeshMaker maker = new MeshMaker(FINE, SCALE);
        maker.add(new Section(0, 10 * MM, 0, t), 0.1 * MM);
        TensorMesh mesh = maker.build();
        int front = vertex(mesh.z(), 0);
        int back = vertex(mesh.z(), t);
        assertThat(back - front).isEqualTo(1);
        assertThat(mesh.z().length(front)).isEqualTo(t);
        assertThat(mesh.z().length(front - 1)).isCloseTo(FINE.corner() * SCALE, within(1e-12));
        assertThat(mesh.cells()).isLessThan(1000);
    }

    @Test
    void nothingAddedIsJustTheDomain() {
        TensorMesh mesh = new MeshMaker(FINE, SCALE).build();
        assertThat(mesh.r().end(mesh.r().elements())).isEqualTo(SCALE + 20 * SCALE);
        assertThat(mesh.z().end(0)).isEqualTo(-20 * SCALE);
        assertThat(mesh.z().end(mesh.z().elements())).isEqualTo(20 * SCALE);
        for (int e = 0; e < mesh.r().elements(); e++) {
            double cap = FINE.cap() * Math.max(SCALE, mesh.r().end(e + 1));
            assertThat(mesh.r().length(e)).isLessThanOrEqualTo(REST * cap);
        }
    }

    /** The number of the vertex at x, within the length below which faces count as one, or -1. */
    private static int vertex(Axis axis, double x) {
        for (int e = 0; e <= axis.elements(); e++) {
            if (Math.abs(axis.end(e) - x) <= 1e-9 * SCALE) {
                return e;
            }
        }
        return -1;
    }
}
