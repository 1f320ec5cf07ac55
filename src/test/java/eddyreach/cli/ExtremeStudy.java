package eddyreach.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;

/** A study of any kind on a shipped switch whose numbers lie at the ends of what anybody might type, as the text of a study file. */
final class ExtremeStudy {

    private static final List<String> METALS = List.of(
            "fe360",
            "stainless-304",
            "nickel",
            "copper",
            "aluminium",
            "aluminium-foil",
            "carbon-fibre",
            "ferrite-mnzn");
    private static final List<String> SWITCHES =
            List.of("m8-flush", "m12-non-flush", "m18-flush", "m18-non-flush", "m30-flush", "block40-non-flush");

    private final Random random;

    private ExtremeStudy(long seed) {
        random = new Random(seed * 0x9E3779B97F4A7C15L);
    }

    /** The text of a seed; the kinds follow one another. */
    static String of(long seed) {
        return new ExtremeStudy(seed).text((int) (seed % 10));
    }

    private String text(int kind) {
        String head = "eddyreach: study\nname: extreme\nswitch: " + pick(SWITCHES) + "\n";
        return head
                + switch (kind) {
                    case 0 -> "kind: approach\ntargets:\n" + targets();
                    case 1 -> "kind: zone\ntargets:\n" + targets();
                    case 2 -> "kind: pass\ndistance: " + length(1e-6, 0.05) + "\ntargets:\n" + targets();
                    case 3 ->
                        "kind: thickness\nmaterials: " + metals() + "\nthicknesses: "
                                + range(1e-9, 1e-6, 1e-4, 0.2, 200) + shape();
                    case 4 ->
                        "kind: size\nmaterials: " + metals() + "\nthickness: " + length(1e-7, 0.1) + "\nsizes: "
                                + range(1e-4, 2e-3, 1e-2, 0.3, 40);
                    case 5 ->
                        "kind: layers\nbase: {material: " + pick(METALS) + ", thickness: " + length(1e-6, 0.1)
                                + "}\ncoatings: " + metals() + "\ncoating thickness: "
                                + range(1e-9, 1e-6, 1e-5, 1e-2, 100) + shape();
                    case 6 ->
                        "kind: background\nbackground: {material: " + pick(METALS) + ", thickness: "
                                + length(1e-6, 0.3) + "}\ntargets:\n" + targets() + "distances: "
                                + range(1e-9, 1e-3, 5e-3, 0.5, 60);
                    case 7 ->
                        "kind: recess\nwall: {materials: " + metals() + ", thickness: " + length(1e-3, 0.2)
                                + "}\ndiameters: " + range(0.045, 0.06, 0.07, 0.2, 4) + "\ndepths: "
                                + range(1e-4, 1e-3, 2e-3, 0.05, 4);
                    case 8 ->
                        "kind: neighbour\narrangement: " + (chance() ? "face to face" : "side by side") + "\nspacings: "
                                + range(0.05, 0.1, 0.11, 1, 20) + "\ntargets:\n" + targets();
                    default ->
                        "kind: mount\nmounts:\n  - name: a\n    sunk by: " + length(1e-6, 0.02)
                                + "\n    wall: {material: " + pick(METALS) + ", thickness: " + length(1e-4, 0.2)
                                + ", bore: " + length(0.042, 0.3) + "}\n"
                                + (chance() ? "targets:\n" + targets() : "");
                }
                + "\n";
    }

    private String shape() {
        return chance() ? "\nshape: plate" : "";
    }

    private String metals() {
        return chance() ? "[" + pick(METALS) + "]" : "[fe360, " + pick(METALS.subList(1, METALS.size())) + "]";
    }

    private String targets() {
        StringBuilder text = new StringBuilder();
        int count = 1 + random.nextInt(2);
        for (int i = 0; i < count; i++) {
            text.append("  - name: t").append(i).append("\n    material: ").append(pick(METALS));
            text.append(
                    switch (random.nextInt(6)) {
                        case 0 -> "\n    shape: plate\n    thickness: " + length(1e-8, 0.5);
                        case 1 ->
                            "\n    shape: disc\n    diameter: " + length(2e-4, 0.5) + "\n    thickness: "
                                    + length(1e-8, 0.1);
                        case 2 -> "\n    shape: sphere\n    diameter: " + length(1e-4, 0.5);
                        case 3 ->
                            "\n    shape: cylinder\n    diameter: " + length(1e-4, 0.2) + "\n    length: "
                                    + length(1e-5, 0.5);
                        case 4 -> washer();
                        default -> "\n    thickness: " + length(1e-9, 1);
                    });
            text.append('\n');
        }
        return text.toString();
    }

    private String washer() {
        double outer = log(1e-3, 0.2);
        return "\n    shape: washer\n    outer: " + number(outer) + "\n    inner: "
                + number(outer * (0.02 + 0.95 * random.nextDouble())) + "\n    thickness: " + length(1e-6, 0.05);
    }

    private String range(double least, double from, double to, double most, int points) {
        return "{from: " + length(least, from) + ", to: " + length(to, most) + ", points: "
                + (2 + random.nextInt(points - 1)) + "}";
    }

    private boolean chance() {
        return random.nextBoolean();
    }

    private String pick(List<String> words) {
        return words.get(random.nextInt(words.size()));
    }

    private String length(double low, double high) {
        return number(log(low, high));
    }

    /** Even in the logarithm. */
    private double log(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private static String number(double metres) {
        return new BigDecimal(metres * 1e3).round(new MathContext(6)).toPlainString() + " mm";
    }
}
