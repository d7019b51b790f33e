package cornerbook.app.cli;

import cornerbook.core.say.Listed;

import cornerbook.words.Reader;

import cornerbook.app.limits.LimitsFile;
import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.tread.WearKnowledge;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import picocli.CommandLine;

/** Learns wear rates, distances and the seizing of pads from all cars of the book. */
@CommandLine.Command(
        name = "learn",
        description =
                "Learn wear rates, distances and the seizing of pads from all cars of the book, for each forecast to start from.")
final class Learn implements Runnable {
    private static final double USUAL_KM_PER_YEAR = 15_000;
    private static final double MONTHS = 12;
    private static final int PADS = 8;

    private final PrintWriter out;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", description = "Print what was learned as JSON.")
    private boolean json;

    Learn(PrintWriter out) {
        this.out = out;
    }

    @Override
    public void run() {
        Knowledge knowledge;
        try (var book = folder.openExisting()) {
            knowledge = book.learn(LocalDate.now(ZoneId.systemDefault()));
        }
        if (json) {
            out.println(Printed.jsonOf(knowledge));
            return;
        }
        if (knowledge.wear().rows().isEmpty()) {
            out.println("The book has no tread reading yet; the defaults serve.");
        }
        knowledge.wear().rows().forEach(row -> {
            out.println(Printed.line(words(row)));
            if (!row.open().isEmpty()) {
                out.println(
                        "  not learned, for the readings are too few, too much alike or contradict each other: %s; what was known before serves"
                                .formatted(Reader.DEFAULT.say(Listed.commas(row.open()))));
            }
        });
        knowledge
                .distances()
                .forEach((season, distance) -> out.println("%s: %.0f ± %.0f km per day, from %s"
                        .formatted(word(season), distance.meanKm(), distance.carSdKm(), cars(distance.cars()))));
        var seizing = knowledge.seizing();
        if (seizing != null) {
            print(seizing);
        }
    }

    private static String words(WearKnowledge.Row row) {
        var learned = row.learned();
        var parameters = learned.parameters();
        var errors = learned.standardErrors();
        var model = row.tyreModel();
        return "%s, %s-wheel drive, %s: front %.3f ± %.3f, rear %.3f ± %.3f mm per 1000 km, from %,d readings of %s"
                .formatted(
                        word(row.season()),
                        word(row.drive()),
                        model == null ? "all tyre models" : model,
                        parameters.frontRateMmPer1000Km(),
                        parameters.frontRateMmPer1000Km() * errors.frontRate(),
                        parameters.rearRateMmPer1000Km(),
                        parameters.rearRateMmPer1000Km() * errors.rearRate(),
                        learned.readings(),
                        cars(learned.cars()));
    }

    private void print(LearnedSeizing seizing) {
        var hazard = seizing.hazard();
        var usual = SeizingExposure.usual(USUAL_KM_PER_YEAR, true);
        var year = hazard.chance(usual, 0, MONTHS);
        out.println(
                "pads seizing, from %,d pad times of %s: %.0f %% (%.0f to %.0f %%) in the year after cleaning, usual exposure, %,.0f km"
                        .formatted(
                                seizing.padTimes(),
                                cars(seizing.cars()),
                                100 * year.probability(),
                                100 * year.lower(),
                                100 * year.upper(),
                                USUAL_KM_PER_YEAR));
        double risk = LimitsFile.load().stream()
                .filter(limit -> limit.kind() == Limit.Kind.SEIZING_RISK)
                .findFirst()
                .orElseThrow()
                .value();
        out.println("  cleaning every %.0f months keeps the chance that one of %d pads seizes at or below %.0f %%"
                .formatted(hazard.serviceIntervalMonths(usual, risk, PADS), PADS, 100 * risk));
        var fit = seizing.fit();
        for (int j = 0; j < fit.coefficients().size(); j++) {
            out.println("  %s: %.2f ± %.2f"
                    .formatted(
                            LearnedSeizing.COEFFICIENTS.get(j),
                            fit.coefficients().get(j),
                            fit.standardError(j)));
        }
        out.println("  shape: %.2f ± %.2f".formatted(1 / fit.scale(), fit.standardErrorOfLogScale() / fit.scale()));
    }

    private static String cars(int cars) {
        return cars == 1 ? "1 car" : cars + " cars";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
