package cornerbook.app.sheet;

import cornerbook.app.book.record.VisitNotes;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Finding;
import cornerbook.core.finding.Limit;
import cornerbook.core.release.Release;
import cornerbook.core.say.Said;
import cornerbook.words.Reader;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;

/** Invented cars for the tests of the sheet. */
final class SheetCars {
    static final Letterhead SHOP = Letterhead.ofInvented(DemoShop.NAME);
    static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Assessor ASSESSOR = new Assessor(List.of(
            new Limit("*", Limit.Kind.TREAD_LEGAL, null, 1.6, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TREAD_SEASON, null, 4.0, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TREAD_AT_FITTING, null, 4.8, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TREAD_SAME_AXLE, null, 1.5, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TREAD_ALL_WHEEL, null, 2.4, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TREAD_DEEPER_PAIR, null, 1.5, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.SEIZING_RISK, null, 0.1, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.PAD_LEGAL, null, 1.6, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.RIVETED_LINING_LEGAL, null, 1.0, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.SEIZING_RISK, null, 0.1, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TYRE_AGE_INSPECT, null, 6, null, null, Said.verbatim("house rule")),
            new Limit("*", Limit.Kind.TYRE_AGE_REPLACE, null, 10, null, null, Said.verbatim("house rule"))));

    private SheetCars() {}

    /** The latest visit of each car of the demonstration. */
    static List<Assessment> lastVisits() {
        return DemoShop.histories(TODAY).stream()
                .map(history ->
                        ASSESSOR.assess(history, history.visits().getLast().id()))
                .toList();
    }

    /** The first car whose latest visit is finished. */
    static Assessment finished() {
        return lastVisits().stream()
                .filter(assessment -> !assessment.visit().leftOn().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    static Assessment ofCustomer(Assessment base, String name) {
        var history = base.history();
        return with(
                base,
                new CarHistory(
                        history.vehicle(),
                        new Customer(history.customer().id(), name, null, null),
                        history.sets(),
                        history.visits()),
                base.visit(),
                base.findings(),
                base.notJudged());
    }

    static Assessment ofVisit(Assessment base, Visit visit) {
        return with(base, base.history(), visit, base.findings(), base.notJudged());
    }

    static Assessment withFindings(Assessment base, List<Finding> findings) {
        return with(base, base.history(), base.visit(), findings, base.notJudged());
    }

    static Assessment with(
            Assessment base, CarHistory history, Visit visit, List<Finding> findings, List<Said> notJudged) {
        return new Assessment(
                history,
                visit,
                base.nextVisit(),
                findings,
                Release.of(visit, findings),
                base.forecasts(),
                base.plan(),
                base.retorque(),
                notJudged,
                base.doubted(),
                base.seizing(),
                base.battery(),
                base.pressure(),
                base.changeOver(),
                visit.card().workDone().stream().map(Said::verbatim).toList());
    }

    /** The visit with other work, readings and notes. */
    static Visit visit(Visit visit, List<Reading> readings, List<String> workDone, String notes) {
        return new Visit(
                visit.id(),
                visit.date(),
                visit.odometerKm(),
                visit.arrivedOn(),
                visit.leftOn(),
                readings,
                new JobCard(
                        visit.card().technician(), workDone, notes, visit.card().nextVisitDue(), List.of()),
                Set.of());
    }

    /** The sheet with nothing noted beside the readings. */
    static byte[] sheet(Assessment assessment) {
        return sheet(assessment, VisitNotes.NONE, Reader.DEFAULT);
    }

    static byte[] sheet(Assessment assessment, VisitNotes notes, Reader reader) {
        return HandoverSheet.render(assessment, SHOP, NOW, notes, List.of(), reader);
    }

    /** The words of the sheet in their order. */
    static String words(Assessment assessment) throws IOException {
        try (var document = Loader.loadPDF(sheet(assessment))) {
            return new PDFTextStripper().getText(document);
        }
    }
}
