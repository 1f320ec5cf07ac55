package eddyreach.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;

/**
 * A random switch with random targets as the two files a user would write: inside what the readers accept, but far
 * outside what anybody builds.
 *
 * @param switchFile text of {@code x-switch.yaml}
 * @param studyFile text of a study that names it
 */
record RandomStudy(String switchFile, String studyFile) {

    private static final List<String> METALS = List.of(
            "fe360",
            "stainless-430",
            "stainless-304",
            "cast-iron-grey",
            "nickel",
            "brass",
            "copper",
            "aluminium",
            "aluminium-foil",
            "zinc");
    private static final List<String> CORES = List.of("ferrite-mnzn", "ferrite-nizn", "fe360", "air");

    /** The study of a seed. */
    static RandomStudy of(long seed) {
        return new Maker(new Random(seed * 0x9E3779B97F4A7C15L)).study();
    }

    private static final class Maker {

        private final Random random;

        Maker(Random random) {
            this.random = random;
        }

        RandomStudy study() {
            double core = log(1e-3, 0.4);
            return new RandomStudy(switchFile(core), studyFile(core));
        }

        private String switchFile(double core) {
            double post = core * between(0.1, 0.6);
            double window = post + (core - post) * between(0.3, 0.95);
            double height = Math.max(1.2e-4, core * log(0.12, 1.5));
            double depth = Math.max(1e-4, height * between(0.3, 0.9));
            double behind = core * between(0, 0.15);
            boolean bare = chance(0.15);
            double inner = post + (window - post) * between(0, 0.3);
            double outer = inner + (window - inner) * between(0.3, 1);
            double front = behind + depth * between(0, 0.3);
            double back = front + (behind + depth - front) * between(0.3, 1);
            double area = (outer - inner) / 2 * (back - front);
            int turns = (int) log(1, 5000);
            int strands = chance(0.5) ? 1 : (int) log(1, 1000);
            double fill = between(0.1, 0.95);
            double wire = Math.sqrt(area * fill / ((double) turns * strands));
            if (wire < 1e-5) {
                wire = 1e-5;
                strands = 1;
                turns = Math.max(1, (int) (area * fill / (wire * wire)));
            }
            StringBuilder text = new StringBuilder("eddyreach: switch\nname: random switch\n");
            text.append("mounting: ")
                    .append(chance(0.5) ? "flush" : "non-flush")
                    .append('\n');
            text.append("rated distance: ").append(mm(within(core * log(0.03, 1), 1e-4, 0.2)));
            text.append("active face: ").append(mm(within(core * 1.2, 1e-3, 0.5)));
            text.append("frequency: ").append(plain(log(1e3, 1e7))).append(" Hz\n");
            if (bare) {
                text.append("core: none\n");
            } else {
                text.append("core:\n  material: ").append(pick(CORES)).append('\n');
                text.append("  outer diameter: ").append(mm(core));
                text.append("  window outer diameter: ").append(mm(window));
                text.append("  post diameter: ").append(mm(post));
                if (chance(0.5)) {
                    text.append("  hole diameter: ").append(mm(post * between(0.01, 0.95)));
                }
                text.append("  height: ").append(mm(height));
                text.append("  window depth: ").append(mm(depth));
                text.append("  behind face: ").append(mm(behind));
            }
            text.append("winding:\n  turns: ").append(turns).append('\n');
            text.append("  inner diameter: ").append(mm(inner));
            text.append("  outer diameter: ").append(mm(outer));
            text.append("  front: ").append(mm(front));
            text.append("  back: ").append(mm(back));
            text.append("  wire:\n    copper diameter: ").append(mm(Math.min(wire, 5e-3)));
            text.append("    strands: ").append(strands).append('\n');
            text.append(housing(core, behind + height));
            text.append(oscillator());
            text.append("switching:\n  differential travel: ")
                    .append(plain(100 * log(1e-4, 0.2)))
                    .append(" %\n  output: normally open\n");
            return text.toString();
        }

        private String housing(double core, double length) {
            StringBuilder text = new StringBuilder();
            if (chance(0.7)) {
                double inner = core * (1 + log(1e-3, 0.5));
                text.append("  - name: tube\n    material: ")
                        .append(pick(METALS))
                        .append('\n');
                text.append("    inner diameter: ").append(mm(inner));
                text.append("    outer diameter: ").append(mm(inner * (1 + log(1e-3, 0.5))));
                double front = chance(0.5) ? 0 : length * between(0, 0.9);
                text.append("    front: ").append(mm(front));
                text.append("    back: ").append(mm(front + length * log(0.1, 5)));
            }
            if (chance(0.2)) {
                double front = length * between(1, 1.5);
                text.append("  - name: plug\n    material: ")
                        .append(pick(METALS))
                        .append('\n');
                text.append("    outer diameter: ").append(mm(core * between(0.1, 1)));
                text.append("    front: ").append(mm(front));
                text.append("    back: ").append(mm(front + length * log(1e-3, 1)));
            }
            return text.isEmpty() ? "" : "housing:\n" + text;
        }

        private String oscillator() {
            String current = "  current: " + plain(log(1e-7, 1)) + " A\n";
            String slope = "  transconductance: " + plain(log(1e-8, 10)) + " S\n";
            return switch (random.nextInt(3)) {
                case 0 -> "oscillator:\n  element: hard limiter\n" + current;
                case 1 -> "oscillator:\n  element: tanh pair\n" + current + slope;
                default ->
                    "oscillator:\n  element: clipped stage\n" + slope + "  clip level: " + plain(log(1e-3, 1e3))
                            + " V\n";
            };
        }

        private String studyFile(double core) {
            StringBuilder text = new StringBuilder(
                    "eddyreach: study\nname: random targets\nkind: approach\nswitch: ./x-switch.yaml\ntargets:\n");
            int count = 1 + random.nextInt(2);
            for (int i = 1; i <= count; i++) {
                text.append("  - name: target-").append(i).append('\n').append(target(core));
            }
            text.append("distances:\n  points: 11\n");
            if (chance(0.3)) {
                text.append("  to: ").append(mm(within(core * log(1e-3, 20), 1e-6, 1)));
            }
            return text.append("field pictures: no\n").toString();
        }

        private String target(double core) {
            StringBuilder text = new StringBuilder();
            switch (random.nextInt(4)) {
                case 0 -> text.append("    shape: plate\n");
                case 1 -> text.append("    shape: standard\n");
                case 2 -> text.append("    shape: disc\n    diameter: ").append(mm(size(core)));
                default -> text.append("    shape: square\n    side: ").append(mm(size(core)));
            }
            int layers = chance(0.6) ? 1 : 1 + random.nextInt(12);
            text.append("    layers:\n");
            for (int i = 0; i < layers; i++) {
                text.append("      - {material: ").append(pick(METALS)).append(", thickness: ");
                text.append(plain(log(1e-9, chance(0.8) ? 1e-2 : 1))).append(" m}\n");
            }
            return text.toString();
        }

        private double size(double core) {
            return within(core * log(0.02, 20), 1e-4, 10);
        }

        private boolean chance(double share) {
            return random.nextDouble() < share;
        }

        private String pick(List<String> words) {
            return words.get(random.nextInt(words.size()));
        }

        private double between(double low, double high) {
            return low + (high - low) * random.nextDouble();
        }

        /** Even in the logarithm. */
        private double log(double low, double high) {
            return low * Math.pow(high / low, random.nextDouble());
        }

        private static double within(double x, double low, double high) {
            return Math.max(low, Math.min(high, x));
        }

        private static String mm(double metres) {
            return plain(metres * 1e3) + " mm\n";
        }

        private static String plain(double x) {
            return new BigDecimal(x).round(new MathContext(8)).toPlainString();
        }
    }
}
