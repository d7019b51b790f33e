package cornerbook.app.cli;

import cornerbook.app.cli.print.Printed;
import cornerbook.app.cli.print.Terminal;
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
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
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

    Learn(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public void run() {
        Knowledge knowledge;
        try (var book = folder.openExisting()) {
            knowledge = book.knowledge().learn(LocalDate.now(ZoneId.systemDefault()));
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
