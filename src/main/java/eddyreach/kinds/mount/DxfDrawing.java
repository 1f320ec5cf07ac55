package eddyreach.kinds.mount;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.values.Body;
import eddyreach.model.values.Mount;
import eddyreach.model.values.SwitchModel;
import eddyreach.model.values.Target;
import eddyreach.report.draw.DxfFile;
import eddyreach.report.words.Labels;
import java.util.ArrayList;
import java.util.List;

/**
 * The section of a mount as a drawing-exchange file of release 12 (AC1009): ASCII, one unit is one millimetre, x from the axis and y from
 * the active face, lines and texts on layers with names, dimensions drawn as lines, arrows and texts. It is an exploration, not for
 * manufacture, and says so.
 */
public final class DxfDrawing {

    private static final String SWITCH = "SWITCH";
    private static final String MOUNT = "MOUNT";
    private static final String TARGET = "TARGET";
    private static final String AXIS = "AXIS";
    private static final String DIMENSIONS = "DIMENSIONS";
    private static final String TITLE = "TITLE";

    /** Layers with their colour numbers. */
    private static final String[][] LAYERS = {
        {"0", "7"}, {SWITCH, "5"}, {MOUNT, "7"}, {TARGET, "1"}, {AXIS, "4"}, {DIMENSIONS, "3"}, {TITLE, "7"}
    };

    private final SwitchModel model;
    private final MountCase found;
    private final DxfFile file;
    private final double unit;
    private final double reach;

    private DxfDrawing(SwitchModel model, MountCase found) {
        this.model = model;
        this.found = found;
        // height of texts, mm
        unit = 0.11 * model.faceDiameter() * Labels.MM;
        file = new DxfFile(unit);
        double widest = found.mount().wall().stream()
                .flatMap(w -> w.openings().stream())
                .mapToDouble(Mount.Opening::front)
                .max()
                .orElse(0);
        double rings = found.mount().rings().stream()
                .mapToDouble(p -> 2 * p.section().r1())
                .max()
                .orElse(0);
        double free = (0.62 * Math.max(model.faceDiameter(), Math.max(widest, rings)) + 0.3 * model.faceDiameter());
        // a wall with an end is drawn whole
        double wall = found.mount().wall().stream()
                .mapToDouble(w -> w.diameter() / 2)
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double edge = found.mount().wall().stream()
                .mapToDouble(w -> MountDrawing.EDGE_SHOWN * w.edge())
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        reach = Math.max(free, Math.max(wall, edge)) * Labels.MM;
    }

    /** The whole file. */
    public static String of(SwitchModel model, MountCase found) {
        return new DxfDrawing(model, found).text();
    }

    private String text() {
        for (Part p : model.parts()) {
            rectangles(SWITCH, p.section(), reach);
        }
        rectangles(SWITCH, model.winding().section(), reach);
        body();
        found.mount().wall().ifPresent(this::wall);
        found.parts().stream()
                .filter(p -> !p.name().startsWith("wall"))
                .forEach(p -> rectangles(MOUNT, p.section(), reach));
        found.mount()
                .background()
                .ifPresent(b -> rectangles(
                        MOUNT,
                        new Section(
                                0,
                                Math.min(b.plate().diameter() / 2, reach / Labels.MM),
                                b.distance(),
                                b.distance() + b.plate().thickness()),
                        reach));
        target();
        double low = file.bottom();
        double high = file.top();
        file.line(AXIS, 0, low - 3 * unit, 0, high + 3 * unit);
        file.line(AXIS, -reach - unit, 0, reach + unit, 0);
        dimensions();
        title();
        return file.text(LAYERS, AXIS);
    }

    /** Face and rear of the body and, where it is threaded, crest and root of its thread as two lines. */
    private void body() {
        double rear = model.rearEnd().orElse(-model.faceDiameter()) * Labels.MM;
        double r = model.bodyDiameter() / 2 * Labels.MM;
        file.line(SWITCH, -r, 0, r, 0);
        file.line(SWITCH, -r, rear, r, rear);
        double front = model.parts().stream()
                .filter(p -> p.role() == Role.HOUSING)
                .mapToDouble(p -> p.section().z1() * Labels.MM)
                .max()
                .orElse(rear);
        for (int side = -1; side <= 1; side += 2) {
            file.line(SWITCH, side * r, front, side * r, 0);
            for (double at : model.thread()
                    .map(t -> new double[] {t.nominal() / 2 * Labels.MM, t.minor() / 2 * Labels.MM})
                    .orElse(new double[0])) {
                file.line(SWITCH, side * at, rear, side * at, front);
            }
        }
    }

    /** The first target where it switches on; nothing when it does not. */
    private void target() {
        MountTarget t = found.targets().get(0);
        if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES) {
            for (Part p : parts(t.target())) {
                Section s = p.shifted(t.distance().on()).section();
                rectangles(TARGET, s, reach);
            }
            if (t.target().body() instanceof Body.Ball ball) {
                file.circle(TARGET, (t.distance().on() + ball.radius()) * Labels.MM, ball.radius() * Labels.MM);
            }
        }
    }

    private static List<Part> parts(Target target) {
        return Double.isFinite(target.radius()) ? target.parts() : List.of();
    }

    private void rectangles(String layer, Section s, double cut) {
        double r0 = s.r0() * Labels.MM;
        double r1 = Math.min(s.r1() * Labels.MM, cut);
        double z0 = s.z0() * Labels.MM;
        double z1 = s.z1() * Labels.MM;
        if (r0 >= r1) {
            return;
        }
        for (int side = -1; side <= 1; side += 2) {
            file.line(layer, side * r0, z1, side * r1, z1);
            file.line(layer, side * r0, z0, side * r1, z0);
            if (s.r1() * Labels.MM <= cut) {
                file.line(layer, side * r1, z0, side * r1, z1);
            }
            if (r0 > 0) {
                file.line(layer, side * r0, z0, side * r0, z1);
            }
        }
    }

    /** The wall with its true outline, open where it goes on beyond the drawing. */
    private void wall(Mount.Wall w) {
        double surface = found.mount().surface() * Labels.MM;
        double back = surface - w.thickness() * Labels.MM;
        for (int side = -1; side <= 1; side += 2) {
            double end = (side > 0 ? Math.min(w.diameter() / 2, w.edge()) : w.diameter() / 2) * Labels.MM;
            wall(w, side, surface, back, end);
        }
    }

    private void wall(Mount.Wall w, int side, double surface, double back, double end) {
        boolean ends = end <= reach;
        double outer = ends ? end : reach;
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {outer, surface});
        double depth = 0;
        for (Mount.Opening o : w.openings()) {
            points.add(new double[] {o.front() / 2 * Labels.MM, surface - o.from() * Labels.MM});
            points.add(new double[] {o.back() / 2 * Labels.MM, surface - o.to() * Labels.MM});
            depth = o.to() * Labels.MM;
        }
        points.add(new double[] {w.bore() / 2 * Labels.MM, surface - depth});
        points.add(new double[] {w.bore() / 2 * Labels.MM, back});
        points.add(new double[] {outer, back});
        for (int i = 1; i < points.size(); i++) {
            double[] a = points.get(i - 1);
            double[] b = points.get(i);
            if (a[0] != b[0] || a[1] != b[1]) {
                file.line(MOUNT, side * a[0], a[1], side * b[0], b[1]);
            }
        }
        if (ends) {
            file.line(MOUNT, side * outer, back, side * outer, surface);
        }
    }

    private void dimensions() {
        double row = 2.2 * unit;
        double above = file.top() + row;
        double below = file.bottom() - row;
        double beside = reach + 2 * row;
        for (MountDimension d : MountDimension.of(found.mount(), model)) {
            double a = d.from() * Labels.MM;
            double b = d.to() * Labels.MM;
            if (d.kind() == MountDimension.Kind.HEIGHT) {
                file.line(DIMENSIONS, reach, a, beside + unit / 2, a);
                file.line(DIMENSIONS, reach, b, beside + unit / 2, b);
                file.line(DIMENSIONS, beside, a, beside, b);
                file.arrow(DIMENSIONS, beside, a, 0, 1);
                file.arrow(DIMENSIONS, beside, b, 0, -1);
                file.write(DIMENSIONS, beside - 0.3 * unit, (a + b) / 2, 90, 1, d.text());
                beside += row;
                continue;
            }
            double y = d.kind() == MountDimension.Kind.DIAMETER_ABOVE ? above : below;
            double feature = Math.max(file.bottom(), d.at() * Labels.MM);
            double over = d.kind() == MountDimension.Kind.DIAMETER_ABOVE ? unit / 2 : -unit / 2;
            if (d.kind() != MountDimension.Kind.EDGE_BELOW) {
                file.line(DIMENSIONS, a, feature, a, y + over);
            }
            file.line(DIMENSIONS, b, feature, b, y + over);
            file.line(DIMENSIONS, a, y, b, y);
            file.arrow(DIMENSIONS, a, y, 1, 0);
            file.arrow(DIMENSIONS, b, y, -1, 0);
            file.write(DIMENSIONS, 0.8 * unit, y + 0.3 * unit, 0, 0, d.text().replace("Ø ", "%%c"));
            if (d.kind() == MountDimension.Kind.DIAMETER_ABOVE) {
                above += row;
            } else {
                below -= row;
            }
        }
    }

    private void title() {
        List<String> lines = new ArrayList<>();
        lines.add("exploration, not for manufacture");
        lines.add(model.name());
        lines.add("mount: " + found.mount().name());
        found.mount().wall().ifPresent(w -> lines.add("wall: " + w.material().name()));
        found.mount().cover().ifPresent(c -> lines.add("cover: " + c.material().name()));
        found.mount()
                .rings()
                .forEach(p -> lines.add(p.name() + ": " + p.material().name()));
        found.mount()
                .background()
                .ifPresent(b -> lines.add("background: " + b.plate().material().name()));
        lines.add("without a target: " + found.verdict().label());
        MountTarget t = found.targets().get(0);
        if (t.distance().outcome() == SwitchDistance.Outcome.SWITCHES) {
            lines.add("target " + t.target().label() + " on at "
                    + Labels.millimetres(t.distance().on()) + " mm, computed, to be confirmed");
        }
        found.mount()
                .wall()
                .filter(w -> found.mount().edged())
                .ifPresent(w -> lines.add("straight edge " + Labels.length(w.edge(), 4) + " from the axis"));
        lines.add("millimetres; " + (found.mount().edged() ? "else " : "") + "axisymmetric; 1 to 1");
        // two percent signs in a name would begin a control code
        lines.replaceAll(l -> DxfFile.ascii(l).replace("%%", "% %"));
        double width =
                0.75 * unit * lines.stream().mapToInt(String::length).max().orElse(0) + 2 * unit;
        double x = file.right() + 3 * unit;
        double y = file.bottom();
        double height = 1.8 * unit * lines.size() + unit;
        file.line(TITLE, x, y, x + width, y);
        file.line(TITLE, x + width, y, x + width, y + height);
        file.line(TITLE, x + width, y + height, x, y + height);
        file.line(TITLE, x, y + height, x, y);
        for (int i = 0; i < lines.size(); i++) {
            file.write(TITLE, x + unit, y + height - 1.8 * unit * (i + 1), 0, 0, lines.get(i));
        }
    }
}
