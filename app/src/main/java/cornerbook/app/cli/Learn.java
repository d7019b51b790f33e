package cornerbook.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import cornerbook.app.book.Book;
import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
import cornerbook.app.knowledge.SigningKey;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.brake.seizing.LearnedSeizing;
import cornerbook.core.brake.seizing.PadsOfACar;
import cornerbook.core.brake.seizing.SeizingExposure;
import cornerbook.core.finding.Knowledge;
import cornerbook.core.finding.Limit;
import cornerbook.core.say.Amount;
import cornerbook.core.say.Between;
import cornerbook.core.say.Listed;
import cornerbook.core.say.PlusMinus;
import cornerbook.core.say.Said;
import cornerbook.core.tread.LearnedWear;
import cornerbook.core.tread.WearKnowledge;
import cornerbook.core.tread.WearParameter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;

/** Learns wear rates, distances and the seizing of pads from all cars of the book. */
@CommandLine.Command(name = "learn", description = "verb-learn")
final class Learn implements Runnable {
    private static final double USUAL_KM_PER_YEAR = 15_000;
    private static final double MONTHS = 12;
    private static final int PADS = 8;

    private final Terminal terminal;

    @CommandLine.Mixin
    private BookFolder folder = new BookFolder();

    @CommandLine.Option(names = "--json", descriptionKey = "option-learn-json")
    private boolean json;

    @CommandLine.ArgGroup(exclusive = false)
    private @Nullable ForOthers forOthers;

    /** Where what this book's own cars teach is written for other shops, and by which keys it is signed. */
    static final class ForOthers {
        @CommandLine.Option(
                names = "--to",
                required = true,
                paramLabel = "${bundle:label-file}",
                descriptionKey = "option-learn-to")
        private Path to = Path.of("");

        @CommandLine.Option(
                names = "--sign-with",
                required = true,
                paramLabel = "${bundle:label-file}",
                descriptionKey = "option-sign-with")
        private Path key = Path.of("");

        private void write(Book book, LocalDate today) {
            TargetFile.refuse(to, false);
            var signing = SigningKey.read(key);
            TargetFile.write(
                    to, book.knowledge().forOthers(today).write(signing).getBytes(UTF_8), false);
        }
    }

    Learn(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        Knowledge knowledge;
        try (var book = folder.openExisting()) {
            var today = LocalDate.now(ZoneId.systemDefault());
            var others = forOthers;
            if (others != null) {
                others.write(book, today);
            }
            knowledge = book.knowledge().learn(today);
        }
        if (json) {
            terminal.out().println(Printed.jsonOf(knowledge));
            return;
        }
        if (knowledge.wear().rows().isEmpty()) {
            terminal.say(CliSaid.Plainly.NOTHING_LEARNED);
        }
        knowledge.wear().rows().forEach(row -> {
            terminal.say(wear(row));
            double widening = row.learned().widening();
            if (widening > 1) {
                under(new CliSaid.Widened(Amount.of(widening, "")));
            }
            if (!row.open().isEmpty()) {
                under(new CliSaid.NotLearned(Listed.commas(row.open())));
            }
        });
        knowledge
                .distances()
                .forEach((season, distance) -> terminal.say(new CliSaid.Distance(
                        season, new PlusMinus(distance.meanKm(), distance.carSdKm(), "km", 0), distance.cars())));
        var seizing = knowledge.seizing();
        if (seizing != null) {
            print(seizing);
        }
    }

    private static Said wear(WearKnowledge.Row row) {
        var learned = row.learned();
        return new CliSaid.Wear(
                row.season(),
                row.drive(),
                row.tyreModel(),
                rate(learned, WearParameter.FRONT_RATE),
                rate(learned, WearParameter.REAR_RATE),
                learned.readings(),
                learned.cars());
    }

    private static PlusMinus rate(LearnedWear learned, WearParameter rate) {
        double mmPer1000Km = learned.parameters().of(rate);
        double relativeError = Objects.requireNonNull(learned.standardErrors().get(rate));
        return new PlusMinus(mmPer1000Km, mmPer1000Km * relativeError, "mm/1000 km", 3);
    }

    private void print(LearnedSeizing seizing) {
        var hazard = seizing.hazard();
        var usual = SeizingExposure.usual(USUAL_KM_PER_YEAR, true);
        var year = hazard.chance(usual, 0, MONTHS);
        terminal.say(new CliSaid.PadsSeize(
                seizing.padTimes(),
                seizing.cars(),
                Amount.of(100 * year.probability(), "%"),
                new Between(100 * year.lower(), 100 * year.upper(), "%", 0),
                Amount.of(USUAL_KM_PER_YEAR, "km")));
        double risk = LimitsFile.load().stream()
                .filter(limit -> limit.kind() == Limit.Kind.SEIZING_RISK)
                .findFirst()
                .orElseThrow()
                .value();
        under(new CliSaid.CleaningEvery(
                (int) Math.round(hazard.serviceIntervalMonths(usual, risk, PADS, new PadsOfACar())),
                PADS,
                Amount.of(100 * risk, "%")));
        var fit = seizing.fit();
        for (int j = 0; j < fit.coefficients().size(); j++) {
            under(new CliSaid.Coefficient(
                    LearnedSeizing.COEFFICIENTS.get(j),
                    new PlusMinus(fit.coefficients().get(j), fit.standardError(j), "", 2)));
        }
        under(new CliSaid.Shape(new PlusMinus(1 / fit.scale(), fit.standardErrorOfLogScale() / fit.scale(), "", 2)));
    }

    /** Indented under what was printed before. */
    private void under(Said said) {
        terminal.out().println("  " + Printed.line(terminal.reader().say(said)));
    }
}
