package cornerbook.bench.brake;

import cornerbook.core.brake.seizing.WeibullFit;
import cornerbook.core.brake.seizing.WeibullRegression;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * The same fit by us and by R's survreg, in one run: coefficients, scale and time, side by side. Needs Rscript with the
 * package survival on the path. R times the fit alone, without reading the file.
 */
public final class SeizingComparison {
    private static final int PADS = 50_000;

    private SeizingComparison() {}

    /**
     * Prints the comparison.
     *
     * @throws IllegalStateException when a figure differs in the first three digits
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        var pads = InventedPads.of(PADS, 11);
        long start = System.nanoTime();
        var fit = WeibullRegression.withoutPriors(4).fit(pads.times(), pads.covariates());
        double coldSeconds = (System.nanoTime() - start) / 1e9;
        compare(fit, coldSeconds, survreg(pads), System.out);
    }

    private static void compare(WeibullFit fit, double coldSeconds, List<String> reference, PrintStream out) {
        out.printf(Locale.ROOT, "%d pads                 ours         survreg%n", PADS);
        for (var line : reference) {
            var cells = line.split(" ", 2);
            double theirs = Double.parseDouble(cells[1]);
            double ours = switch (cells[0]) {
                case "scale" -> fit.scale();
                case "seconds" -> coldSeconds;
                default -> fit.coefficients().get(Integer.parseInt(cells[0]));
            };
            out.printf(Locale.ROOT, "%-12s %18.9f %15.9f%n", cells[0], ours, theirs);
            if (!cells[0].equals("seconds") && Math.abs(ours - theirs) > 5e-4 * Math.abs(theirs)) {
                throw new IllegalStateException("%s is %s, survreg has %s".formatted(cells[0], ours, theirs));
            }
        }
    }

    private static List<String> survreg(InventedPads pads) throws IOException, InterruptedException {
        var data = Files.createTempFile("pads", ".csv");
        var script = Files.createTempFile("survreg", ".R");
        try {
            write(pads, data);
            try (var resource = SeizingComparison.class.getResourceAsStream("survreg.R")) {
                Files.write(script, Objects.requireNonNull(resource).readAllBytes());
            }
            var process = new ProcessBuilder("Rscript", script.toString(), data.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            var lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            if (process.waitFor() != 0) {
                throw new IllegalStateException("Rscript ended with " + process.exitValue());
            }
            return lines;
        } finally {
            Files.delete(data);
            Files.delete(script);
        }
    }

    private static void write(InventedPads pads, Path file) throws IOException {
        try (var writer = Files.newBufferedWriter(file)) {
            writer.write("after,by,salt,garage,distance,friction\n");
            for (int i = 0; i < PADS; i++) {
                var time = pads.times().get(i);
                var x = pads.covariates().get(i);
                writer.write("%s,%s,%s,%s,%s,%s%n"
                        .formatted(
                                time.after() == 0 ? "NA" : time.after(),
                                time.by() == Double.POSITIVE_INFINITY ? "NA" : time.by(),
                                x.get(0),
                                x.get(1),
                                x.get(2),
                                x.get(3)));
            }
        }
    }
}
