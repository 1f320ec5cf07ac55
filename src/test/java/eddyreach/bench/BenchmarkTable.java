package eddyreach.solved;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs all benchmarks and the SciPy comparison in one go and writes their medians into src/site/markdown/benchmarks.md between its markers.
 *
 * <p>Start with {@code mvn -q test-compile exec:exec@benchmarks} from the project's root.
 */
public final class BenchmarkTable {

    private static final String BEGIN = "<!-- benchmarks: begin -->";
    private static final String END = "<!-- benchmarks: end -->";
    private static final Path SCRIPT = Path.of("src/test/python/scipy_operator.py");
    private static final int SCIPY_RUNS = 5;

    private BenchmarkTable() {}

    public static void main(String[] args) throws RunnerException, IOException, InterruptedException {
        List<Double> scipy = new ArrayList<>(scipy());
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include("eddyreach\\..*Benchmark\\..*")
                        .build())
                .run();
        scipy.addAll(scipy());
        Path file = Path.of("src/site/markdown/benchmarks.md");
        String text = Files.readString(file);
        int a = text.indexOf(BEGIN);
        int b = text.indexOf(END);
        if (a < 0 || b < a) {
            throw new IllegalStateException(file + " has no place for the benchmarks: " + BEGIN + " ... " + END);
        }
        String table = table(medians(results), scipy);
        Files.writeString(file, text.substring(0, a + BEGIN.length()) + "\n" + table + text.substring(b));
    }

    /** Median microseconds by benchmark and parameter. */
    private static Map<String, Double> medians(Collection<RunResult> results) {
        Map<String, Double> medians = new TreeMap<>();
        for (RunResult r : results) {
            String name = r.getParams().getBenchmark().replaceAll(".*\\.", "");
            for (String key : r.getParams().getParamsKeys()) {
                name += " " + r.getParams().getParam(key);
            }
            medians.put(name, r.getPrimaryResult().getStatistics().getPercentile(50));
        }
        return medians;
    }

    /** Seconds of the SciPy script's factorisation and solves, none where Python or SciPy is missing. */
    private static List<Double> scipy() throws IOException, InterruptedException {
        List<Double> seconds = new ArrayList<>();
        for (int i = 0; i < SCIPY_RUNS; i++) {
            Process p;
            try {
                p = new ProcessBuilder("/usr/bin/python3", SCRIPT.toString())
                        .redirectErrorStream(true)
                        .start();
            } catch (IOException e) {
                return List.of();
            }
            String out = new String(p.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (p.waitFor() != 0) {
                return List.of();
            }
            seconds.add(Double.parseDouble(out.trim().split("\\s+")[1]));
        }
        return seconds;
    }

    private static String table(Map<String, Double> medians, List<Double> scipy) {
        StringBuilder s = new StringBuilder();
        s.append("Measured on ")
                .append(LocalDate.now())
                .append(", Java ")
                .append(Runtime.version().feature());
        s.append(", ")
                .append(Runtime.getRuntime().availableProcessors())
                .append(" cores (")
                .append(processor());
        s.append("), medians.\n\n| what | median |\n|---|---|\n");
        medians.forEach((name, us) ->
                s.append("| ").append(name).append(" | ").append(time(us)).append(" |\n"));
        Optional<Double> middle = median(scipy);
        if (middle.isPresent()) {
            s.append("| SciPy: factorisation and 25 solves of the same operator | ");
            s.append(time(middle.get() * 1e6)).append(" |\n");
            s.append(String.format(
                    Locale.ROOT,
                    "%nThe switch operator is %.0f times as fast as SciPy's, factorisation and operator alone %.0f times; both at"
                            + " 0.1 %% or better.",
                    middle.get() * 1e6 / medians.get("switchOperator"),
                    middle.get() * 1e6 / medians.get("factorAndOperator")));
        } else {
            s.append("\nSciPy was not at hand in this run.");
        }
        s.append(String.format(
                Locale.ROOT,
                " One more distance of a plate: %.0f per second on one core. Exponent of the factorisation time over the unknowns from"
                        + " %d to %d: %.2f.%n",
                1e6 / medians.get("plateDistance"),
                BiquadraticGrid.unknowns(36),
                BiquadraticGrid.unknowns(224),
                exponent(medians)));
        return s.toString();
    }

    /** Least-squares slope of log time over log unknowns. */
    private static double exponent(Map<String, Double> medians) {
        double[] x = {36, 71, 159, 224};
        double n = x.length;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (double c : x) {
            double u = Math.log(BiquadraticGrid.unknowns((int) c));
            double t = Math.log(medians.get("factor " + (int) c));
            sx += u;
            sy += t;
            sxx += u * u;
            sxy += u * t;
        }
        return (n * sxy - sx * sy) / (n * sxx - sx * sx);
    }

    private static Optional<Double> median(List<Double> values) {
        double[] v = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return v.length == 0 ? Optional.empty() : Optional.of((v[(v.length - 1) / 2] + v[v.length / 2]) / 2);
    }

    private static String time(double us) {
        return us < 1000
                ? String.format(Locale.ROOT, "%.1f us", us)
                : us < 1e6
                        ? String.format(Locale.ROOT, "%.1f ms", us / 1e3)
                        : String.format(Locale.ROOT, "%.2f s", us / 1e6);
    }

    private static String processor() {
        Path info = Path.of("/proc/cpuinfo");
        try {
            return Files.readAllLines(info).stream()
                    .filter(l -> l.startsWith("model name"))
                    .map(l -> l.replaceAll(".*:\\s*", ""))
                    .findFirst()
                    .orElse(System.getProperty("os.arch"));
        } catch (IOException e) {
            return System.getProperty("os.arch");
        }
    }
}
