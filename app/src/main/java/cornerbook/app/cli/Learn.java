package cornerbook.app.cli;

import cornerbook.core.visit.Knowledge;
import cornerbook.core.wear.WearKnowledge;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import picocli.CommandLine;

/** Learns wear rates and distances from all cars of the book. */
@CommandLine.Command(
        name = "learn",
        description = "Learn wear rates and distances from all cars of the book, for each forecast to start from.")
final class Learn implements Runnable {
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
        knowledge.wear().rows().forEach(row -> out.println(Printed.line(words(row))));
        knowledge
                .distances()
                .forEach((season, distance) -> out.println("%s: %.0f ± %.0f km per day, from %s"
                        .formatted(word(season), distance.meanKm(), distance.carSdKm(), cars(distance.cars()))));
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

    private static String cars(int cars) {
        return cars == 1 ? "1 car" : cars + " cars";
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
