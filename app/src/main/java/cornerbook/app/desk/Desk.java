package cornerbook.app.desk;

import cornerbook.app.book.Book;
import cornerbook.app.book.bay.VisitInBay;
import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.record.LeavingCheck;
import cornerbook.app.book.visit.CancelledVisit;
import cornerbook.app.book.work.Declined;
import cornerbook.app.judge.Judged;
import cornerbook.app.request.PageException;
import cornerbook.app.request.Told;
import cornerbook.core.assess.Advice;
import cornerbook.core.assess.Assessment;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Visit;
import cornerbook.core.finding.Finding;
import cornerbook.core.release.ChargedWork;
import cornerbook.core.release.OpenPoint;
import cornerbook.core.release.ReleaseRule;
import cornerbook.words.Language;
import cornerbook.words.Reader;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What every page works with: the book, the assessor and the day. */
public record Desk(Book book, Learning learning, CarLists lists, Clock clock) {
    private static final int LONGEST_NAME = 200;

    public Assessor assessor() {
        return learning.assessor();
    }

    /** The day of a moment at the shop. */
    public LocalDate dayOf(Instant moment) {
        return LocalDate.ofInstant(moment, clock.getZone());
    }

    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The day that an address names, today where it names none, or a page that says that it is no day. */
    public LocalDate dayInAddress(String text) {
        try {
            return text.isEmpty() ? today() : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new PageException(400, new DeskSaid.NoDayInAddress(today().toString()));
        }
    }

    /** By the clock of the shop. */
    public LocalDateTime localNow() {
        return LocalDateTime.now(clock);
    }

    public Instant now() {
        return clock.instant();
    }

    /** Whether customers may be called and written to today. */
    public Reach reach() {
        return book.contacts().reach(today());
    }

    /** The car, or a page that says that there is none. */
    public CarHistory getHistory(String vehicleId) {
        return book.cars().find(vehicleId).orElseThrow(() -> new PageException(404, new DeskSaid.NoCar()));
    }

    public CarHistory getHistoryOfVisit(String visitId) {
        return book.cars().findOfVisit(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** The visit alone, or a page that says that there is none. */
    public Visit getVisit(String visitId) {
        return book.visits().find(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** The visit with what tablets show of it, or a page that says that there is none. */
    public VisitInBay getVisitInBay(String visitId) {
        return book.bay().findVisit(visitId).orElseThrow(() -> noVisit(visitId));
    }

    /** Why the book gives no visit of that id: it was cancelled, or never there. */
    private PageException noVisit(String visitId) {
        return new PageException(
                404,
                book.visits()
                        .findCancelled(visitId)
                        .map(CancelledVisit::cancelled)
                        .<DeskSaid>map(cancelled ->
                                new DeskSaid.VisitCancelled(cancelled.on(), cancelled.person(), cancelled.reason()))
                        .orElseGet(DeskSaid.NoVisit::new));
    }

    /** The latest visit with all that was found out at it; empty for a car without visits. */
    public Optional<Assessment> assessLatest(CarHistory history) {
        return history.visits().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        assessor().assess(history, history.visits().getLast().id()));
    }

    /** The visit with all that was found out at it. */
    public Assessment assess(OpenVisit open) {
        var assessment = assessor().assess(open.history(), open.visit().id());
        return assessment.withOpen(openPoints(open, assessment.findings()));
    }

    /** What is found at the visit by what the book has now, gravest first; nothing where it cannot be judged. */
    public List<Finding> findings(OpenVisit open) {
        var visitId = open.visit().id();
        return Judged.of("visit " + visitId, () -> assessor().findings(open.history(), visitId))
                .orElse(List.of());
    }

    /** What keeps the car from leaving, by all that the book has. */
    public List<OpenPoint> openPoints(OpenVisit open) {
        return openPoints(open, findings(open));
    }

    private List<OpenPoint> openPoints(OpenVisit open, List<Finding> findings) {
        var notes = book.bay().read(open.visit().id());
        var held = book.estimates().of(open.visit().id()).held(open.visit()).stream()
                .map(ChargedWork::notAgreed);
        return Stream.concat(
                        new LeavingCheck(
                                        open.visit(),
                                        notes.ticks(),
                                        notes.authors().values())
                                .open(leavingRules(open), findings).stream(),
                        held)
                .toList();
    }

    /** What opens and closes a point at a visit in this shop. */
    public List<ReleaseRule> leavingRules(OpenVisit open) {
        return ReleaseRule.all(book.rules().asksSecondCheck(), isRetorqueMissed(open));
    }

    /** A re-torque that was due, and neither recorded nor left to the customer with a reason at a visit between. */
    private boolean isRetorqueMissed(OpenVisit open) {
        return book.retorques()
                .findMissed(open.history(), open.visit())
                .filter(fittedAt -> open.since(fittedAt)
                        .flatMap(visit -> book.bay().findDeparture(visit.id()).stream())
                        .flatMap(departure -> departure.reasons().stream())
                        .noneMatch(reason -> reason.caution().equals(OpenPoint.Kind.RETORQUE.name())))
                .isPresent();
    }

    /** What the car's findings ask for, by what the book has now. */
    public List<Advice> advice(OpenVisit open) {
        return Advice.of(open.history(), open.visit(), findings(open));
    }

    /** Who takes papers of this car home: in the language that the book knows, else in that of who asks, by the shop's time. */
    public Reader customerReader(CarHistory history) {
        return reader(history.customer());
    }

    /** The same of a customer, whatever the car. */
    public Reader reader(Customer customer) {
        var asks = Told.reader().at(clock.getZone());
        return Optional.ofNullable(customer.language())
                .flatMap(Language::find)
                .map(asks::in)
                .orElse(asks);
    }

    /**
     * The customer's answer to an advice, kept in the words in which the customer reads it.
     *
     * @param saidBy who of the customer's side said so; empty for the customer
     * @throws PageException when the name is too long, or nothing of the kind was advised, or declined before
     */
    public Declined declined(
            OpenVisit open,
            String id,
            String adviceKey,
            boolean declined,
            String saidBy,
            String person,
            Instant madeAt) {
        if (saidBy.length() > LONGEST_NAME) {
            throw new PageException(422, new DeskSaid.NameTooLong(LONGEST_NAME));
        }
        var customer = open.history().customer();
        var sentence = advice(open).stream()
                .filter(advice -> advice.key().equals(adviceKey) && advice.mayBeDeclined())
                .map(Advice::asked)
                .map(customerReader(open.history())::begin)
                .findFirst()
                .or(() -> book.bay().read(open.visit().id()).declined().stream()
                        .filter(before -> before.advice().equals(adviceKey))
                        .map(Declined::sentence)
                        .findFirst())
                .orElseThrow(() -> new PageException(422, new DeskSaid.NoAdvice()));
        return new Declined(
                id, adviceKey, sentence, declined, saidBy.isBlank() ? customer.name() : saidBy, person, madeAt);
    }

    /** The visit, or a page that says that there is none. */
    public OpenVisit getOpenVisit(String visitId) {
        var history = getHistoryOfVisit(visitId);
        return new OpenVisit(history, history.getVisit(visitId));
    }
}
