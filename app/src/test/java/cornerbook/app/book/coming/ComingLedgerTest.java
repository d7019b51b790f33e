package cornerbook.app.book.coming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.bill.AgreedWork;
import cornerbook.app.book.bill.BillLedger;
import cornerbook.app.book.bill.CreditReason;
import cornerbook.app.book.coming.ComingLedger.Days;
import cornerbook.app.book.rack.By;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.book.rack.StorageTerm;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.CallAnswer;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.cars.CarLibrary;
import cornerbook.app.demo.DemoShop;
import cornerbook.app.desk.CarLists;
import cornerbook.app.desk.Learning;
import cornerbook.app.limits.LimitsFile;
import cornerbook.core.assess.Assessor;
import cornerbook.core.car.CarHistory;
import cornerbook.core.coming.Matter;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.store.FloorPoint;
import cornerbook.core.store.Naming;
import cornerbook.core.store.Rack;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who of the invented shop's customers is to be asked to come back. */
class ComingLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final By BY = new By("Ida", NOW);
    private static final Days YEAR = Days.until(TODAY.plusYears(1), TODAY);

    @AutoClose
    private Book book;

    @BeforeEach
    void judgeTheShop(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        book.records().addCars(DemoShop.histories(TODAY));
        judge();
    }

    private void judge() {
        var clock = Clock.fixed(NOW, ZoneOffset.UTC);
        new CarLists(book, new Learning(book, new Assessor(LimitsFile.load()), clock), clock).judgeOld();
    }

    private List<ComingCustomer> all() {
        return book.coming().list(YEAR, 0, 1000).list();
    }

    private ComingCustomer ofCar(String vehicleId) {
        return all().stream()
                .filter(customer ->
                        customer.cars().stream().anyMatch(car -> car.id().equals(vehicleId)))
                .findFirst()
                .orElseThrow();
    }

    private static List<AskedMatter> matters(ComingCustomer customer) {
        return customer.cars().stream()
                .flatMap(car -> car.matters().stream())
                .map(ComingCar.Due::asked)
                .toList();
    }

    private static CallAnswer answer(CallAnswer.Kind kind) {
        return new CallAnswer(kind, "Ida", NOW);
    }

    /** Held against what judging each car anew says, and the open re-torques as the first page has them. */
    @Test
    void theListIsWhatJudgingEachCarSays() {
        var assessor = new Assessor(LimitsFile.load());
        var judged = DemoShop.histories(TODAY).stream()
                .flatMap(history -> assessor
                        .outcome(history, history.visits().getLast().id())
                        .matters()
                        .stream()
                        .filter(due ->
                                !due.day().isBefore(YEAR.from()) && !due.day().isAfter(YEAR.until()))
                        .map(due -> history.vehicle().id() + " " + due.matter() + " " + due.day()));
        var stored = book.stock().list().stream()
                .filter(KeptSet::lies)
                .flatMap(set -> set.since(ZoneOffset.UTC).map(day -> day.plusMonths(9)).stream()
                        .filter(due -> !due.isBefore(YEAR.from()) && !due.isAfter(YEAR.until()))
                        .map(due -> set.key().vehicleId() + " STORED_SET " + due));
        var retorques = book.retorques().listOpen().stream()
                .filter(open -> !open.dueDate().isBefore(YEAR.from()))
                .map(open -> book.cars()
                                .findOfVisit(open.visitId())
                                .orElseThrow()
                                .vehicle()
                                .id() + " RETORQUE " + open.dueDate());
        assertThat(all().stream()
                        .flatMap(customer -> customer.cars().stream())
                        .flatMap(car -> car.matters().stream()
                                .map(due -> car.id() + " " + due.matter().name() + " " + due.day())))
                .isNotEmpty()
                .containsExactlyInAnyOrderElementsOf(Stream.of(judged, retorques, stored)
                        .flatMap(each -> each)
                        .toList());
    }

    /** Off the car for nine months, or until the day that was agreed when it was taken in. */
    @Test
    void aStoredSetIsDueWhenItsTimeIsOver() {
        var set = book.stock().find("03S1").orElseThrow();
        assertThat(set.lies()).isTrue();
        var nobodyFetched = set.since(ZoneOffset.UTC).orElseThrow().plusMonths(9);
        assertThat(due("demo-03", Matter.STORED_SET, YEAR)).containsExactly(nobodyFetched);

        var agreed = TODAY.plusDays(10);
        term("a", set.key(), agreed);
        assertThat(due("demo-03", Matter.STORED_SET, YEAR)).containsExactly(agreed);
        term("b", set.key(), TODAY.plusYears(2));
        assertThat(due("demo-03", Matter.STORED_SET, YEAR)).isEmpty();
        term("c", set.key(), agreed);

        var later = TODAY.plusDays(40);
        assertThat(due("demo-03", Matter.STORED_SET, Days.until(later.plusYears(1), later)))
                .as("overdue")
                .containsExactly(agreed);
        book.racks()
                .name(
                        "rack",
                        new Rack("Cellar", new Naming("K-#", 1, 4), new FloorPoint(2, 1), Rack.Along.INWARD, 1, 1),
                        BY);
        book.stock().put("again", "03S1", "K-1", BY, later);
        assertThat(due("demo-03", Matter.STORED_SET, Days.until(later.plusYears(1), later)))
                .as("taken in again: what was agreed before is over")
                .containsExactly(later.plusMonths(9));
        book.coming()
                .answer(
                        "said",
                        List.of(new AskedMatter(lastVisit("demo-03"), Matter.STORED_SET)),
                        answer(CallAnswer.Kind.NOT_REACHED));
        assertThat(book.stock().listCalls().get("demo-03"))
                .as("the list of sets that nobody fetched knows of it")
                .extracting(called -> called.last())
                .isEqualTo(answer(CallAnswer.Kind.NOT_REACHED));
        book.stock().handOut("out", "03S1", BY, later);
        assertThat(due("demo-03", Matter.STORED_SET, Days.until(later.plusYears(1), later)))
                .isEmpty();
    }

    private void term(String id, KeptSet.Key key, LocalDate until) {
        assertThat(book.terms().add(id, key, new StorageTerm(until, BY), TODAY)).isEqualTo(Arrival.STORED);
    }

    @Test
    void nobodyAgreesOnAStorageThatIsOverOrOfAnotherSet() {
        var key = book.stock().find("03S1").orElseThrow().key();
        for (var until : List.of(TODAY.minusDays(1), TODAY.plusYears(11))) {
            assertThatThrownBy(() -> book.terms().add("x", key, new StorageTerm(until, BY), TODAY))
                    .extracting(InEnglish::told)
                    .asString()
                    .contains("a set is stored until a day from 25 Nov 2026 to 25 Nov 2036");
        }
        assertThatThrownBy(() ->
                        book.terms().add("x", new KeptSet.Key("demo-03", "none"), new StorageTerm(TODAY, BY), TODAY))
                .extracting(InEnglish::told)
                .asString()
                .contains("there is no such wheel set");
        assertThat(book.terms().find(key)).isEmpty();
    }

    /** Ontario: 90 days from the bill, Consumer Protection Act, 2002, section 63(1); Québec: three months, P-40.1, section 176. */
    @Test
    void theGuaranteeOfBilledWorkIsDueOnItsLastDay() {
        var visits = Map.of("demo-01", "CA-ON", "demo-03", "CA-QC");
        visits.forEach((car, place) -> {
            var visitId = lastVisit(car);
            AgreedWork.agree(book, visitId, place, Map.of("Brakes freed", "100"));
            bill(visitId, TODAY);
        });
        assertThat(due("demo-01", Matter.WARRANTY, YEAR)).containsExactly(LocalDate.of(2027, 2, 23));
        assertThat(due("demo-03", Matter.WARRANTY, YEAR)).containsExactly(LocalDate.of(2027, 2, 25));
        var last = LocalDate.of(2027, 2, 23);
        assertThat(due("demo-01", Matter.WARRANTY, Days.until(last, last))).hasSize(1);
        assertThat(due("demo-01", Matter.WARRANTY, Days.until(last.plusDays(1), last.plusDays(1))))
                .as("it has ended")
                .isEmpty();
        assertThat(due("demo-01", Matter.WARRANTY, Days.until(last.minusDays(1), TODAY)))
                .isEmpty();
        book("demo-01", last.plusDays(1), PlannedWork.BRAKES, "too late");
        assertThat(due("demo-01", Matter.WARRANTY, YEAR)).hasSize(1);
        book("demo-01", last, PlannedWork.BRAKES, "in time");
        assertThat(due("demo-01", Matter.WARRANTY, YEAR)).isEmpty();
        book.bills().credit("back", 1, CreditReason.WRONG_CAR, "wrong car", TODAY, "Ida", NOW);
        book.bills().credit("back too", 2, CreditReason.WRONG_CAR, "wrong car", TODAY, "Ida", NOW);
        assertThat(due("demo-03", Matter.WARRANTY, YEAR))
                .as("nothing is guaranteed")
                .isEmpty();
    }

    private String lastVisit(String car) {
        return book.cars().find(car).orElseThrow().visits().getLast().id();
    }

    private void bill(String visitId, LocalDate day) {
        book.bills()
                .make(new BillLedger.NewBill(visitId, visitId, List.of("Brakes freed"), List.of(), day, "Ida", NOW));
    }

    private List<LocalDate> due(String car, Matter matter, Days days) {
        return book.coming().list(days, 0, 1000).list().stream()
                .flatMap(customer -> customer.cars().stream())
                .filter(each -> each.id().equals(car))
                .flatMap(each -> each.matters().stream())
                .filter(due -> due.matter() == matter)
                .map(ComingCar.Due::day)
                .toList();
    }

    @Test
    void customersStandByTheirFirstDayAndPagesDivideThem() {
        var all = all();
        assertThat(all).extracting(ComingCustomer::first).isSorted();
        assertThat(book.coming().list(YEAR, 2, 3).list())
                .extracting(ComingCustomer::customer)
                .containsExactlyElementsOf(
                        all.subList(2, 5).stream().map(ComingCustomer::customer).toList());
        assertThat(book.coming().list(YEAR, 2, 3).all()).isEqualTo(all.size());
        var near = book.coming().list(Days.until(TODAY, TODAY), 0, 100).list();
        assertThat(near).isNotEmpty().hasSizeLessThan(all.size());
        assertThat(near)
                .flatExtracting(ComingCustomer::cars)
                .flatExtracting(ComingCar::matters)
                .allSatisfy(due -> assertThat(due.day()).isBetween(TODAY.minusDays(120), TODAY));
    }

    /** Two cars of one customer stand together: one call is enough. */
    @Test
    void theCarsOfACustomerStandTogether() {
        var first = DemoShop.histories(TODAY).getFirst();
        var second = CarLibrary.car(CarLibrary.text("sound-car"));
        book.records()
                .addCars(List.of(new CarHistory(second.vehicle(), first.customer(), second.sets(), second.visits())));
        judge();
        var days = Days.until(LocalDate.of(2036, 1, 1), LocalDate.of(2026, 1, 1));
        assertThat(book.coming().find(first.customer().id(), days).cars())
                .extracting(ComingCar::id)
                .contains(first.vehicle().id(), second.vehicle().id());
        assertThat(book.coming().list(days, 0, 1000).list())
                .filteredOn(each -> each.customer().id().equals(first.customer().id()))
                .hasSize(1);
    }

    @Test
    void whatCameOfACallIsKeptOnceAndWhoDeclinedIsNotAskedAgain() {
        var customer = all().getFirst();
        assertThat(book.coming().answer("a", matters(customer), answer(CallAnswer.Kind.NOT_REACHED)))
                .isEqualTo(Arrival.STORED);
        assertThat(book.coming().answer("a", matters(customer), answer(CallAnswer.Kind.NOT_REACHED)))
                .as("sent twice")
                .isEqualTo(Arrival.ALREADY);
        assertThat(all().getFirst().last()).contains(answer(CallAnswer.Kind.NOT_REACHED));

        var one = matters(customer).subList(0, 1);
        book.coming().answer("b", one, answer(CallAnswer.Kind.DECLINED));
        assertThat(all().stream().flatMap(each -> matters(each).stream()))
                .doesNotContainAnyElementsOf(one)
                .containsAll(matters(customer).subList(1, matters(customer).size()));
        book.coming().answer("c", one, answer(CallAnswer.Kind.CALLED));
        assertThat(all().stream().flatMap(each -> matters(each).stream()))
                .as("changed their mind")
                .containsAll(one);
    }

    /** A re-torque that the first page's list was answered for is answered here. */
    @Test
    void theFirstPageAndThisListKnowOfEachOther() {
        var open = openRetorque();
        book.retorques().answer("a", open.visitId(), answer(CallAnswer.Kind.DECLINED));
        assertThat(all().stream().flatMap(each -> matters(each).stream()))
                .doesNotContain(new AskedMatter(open.visitId(), Matter.RETORQUE));
    }

    @Test
    void whoComesOnADayHasAnAppointmentAndIsNotAskedAgain() {
        var customer = all().getFirst();
        var day = TODAY.plusDays(3);
        assertThat(book.coming().comes("a", matters(customer), answer(CallAnswer.Kind.WILL_COME), day, TODAY))
                .isEqualTo(Arrival.STORED);
        assertThat(book.coming().comes("a", matters(customer), answer(CallAnswer.Kind.WILL_COME), day, TODAY))
                .isEqualTo(Arrival.ALREADY);
        assertThat(book.appointments().list(day, day))
                .hasSameSizeAs(customer.cars())
                .allSatisfy(agreed -> {
                    assertThat(agreed.state()).isEqualTo(AppointmentState.BOOKED);
                    assertThat(agreed.because().person()).isEqualTo("Ida");
                    assertThat(agreed.plan().minutes()).isPositive();
                });
        assertThat(all()).extracting(ComingCustomer::customer).doesNotContain(customer.customer());
    }

    /** Wheels that are to be tightened again now do not wait for the next change-over. */
    @Test
    void aLateAppointmentAnswersNoRetorque() {
        var open = openRetorque();
        var car =
                book.cars().findOfVisit(open.visitId()).orElseThrow().vehicle().id();
        book(car, TODAY.plusDays(140), PlannedWork.WHEELS_AND_BRAKES, "late");
        assertThat(matters(ofCar(car))).containsExactly(new AskedMatter(open.visitId(), Matter.RETORQUE));
        book(car, TODAY.plusDays(2), PlannedWork.RETORQUE, "soon");
        assertThat(all())
                .flatExtracting(ComingCustomer::cars)
                .extracting(ComingCar::id)
                .doesNotContain(car);
    }

    /** The brakes in December are not the change-over of April. */
    @Test
    void anAppointmentLongBeforeTheDayIsForSomethingElse() {
        var customer = all().stream()
                .filter(each -> each.cars().getFirst().matters().stream()
                        .anyMatch(due -> due.day().isAfter(TODAY.plusDays(90))))
                .findFirst()
                .orElseThrow();
        var car = customer.cars().getFirst().id();
        book(car, TODAY.plusDays(20), PlannedWork.BRAKES, "early");
        assertThat(matters(ofCar(car))).extracting(AskedMatter::matter).contains(Matter.NEXT_VISIT);
    }

    private OpenRetorque openRetorque() {
        return book.retorques().listOpen().stream()
                .filter(open -> !open.dueDate().isBefore(YEAR.from()))
                .findFirst()
                .orElseThrow();
    }

    private void book(String car, LocalDate day, PlannedWork work, String id) {
        book.appointments()
                .make(
                        id,
                        car,
                        AppointmentState.BOOKED,
                        new Plan(day, null, work, 30, null, null, ""),
                        new Because(null, null, NOW),
                        TODAY);
    }

    /** The fact stays, and the customer is asked again. */
    @Test
    void whoDidNotComeIsAskedAgainAndTheListSaysSo() {
        var car = all().getFirst().cars().getFirst();
        book(car.id(), TODAY, PlannedWork.WHEELS_AND_BRAKES, "a");
        assertThat(all())
                .flatExtracting(ComingCustomer::cars)
                .extracting(ComingCar::id)
                .doesNotContain(car.id());
        book.appointments().miss("b", "a", 0, new Because("the road was closed", "Ida", NOW), TODAY);
        assertThat(ofCar(car.id()).cars().getFirst().missed())
                .isEqualTo(new ComingCar.Missed(TODAY, "the road was closed"));
        assertThat(book.customers()
                        .find(ofCar(car.id()).customer().id())
                        .orElseThrow()
                        .mentions())
                .anySatisfy(mention -> {
                    assertThat(mention.kind().name()).isEqualTo("MISSED");
                    assertThat(mention.words()).contains("the road was closed");
                });
        assertThat(book.appointments().find("a"))
                .hasValueSatisfying(agreed -> assertThat(agreed.state()).isEqualTo(AppointmentState.MISSED));
    }

    @Test
    void whoseDataWereErasedIsNotAsked() {
        var customer = all().getFirst().customer();
        book.customers()
                .erase(
                        customer.id(),
                        false,
                        false,
                        new cornerbook.app.book.visit.Because(null, "asked for it", "Ida", TODAY));
        assertThat(all()).extracting(each -> each.customer().id()).doesNotContain(customer.id());
    }

    @Test
    void whatIsNotDueOrCannotBeChangesNothing() {
        var customer = all().getFirst();
        var visitId = matters(customer).getFirst().visitId();
        var before = all();
        for (var matters : List.of(
                List.<AskedMatter>of(),
                List.of(new AskedMatter("no-visit", Matter.NEXT_VISIT)),
                Stream.concat(matters(customer).stream(), Stream.of(new AskedMatter("no-visit", Matter.RETORQUE)))
                        .toList())) {
            assertThatThrownBy(() -> book.coming().answer("x", matters, answer(CallAnswer.Kind.CALLED)))
                    .extracting(InEnglish::told)
                    .asString()
                    .containsAnyOf("choose what the customer was asked about", "not due for this car");
        }
        assertThatThrownBy(() -> book.coming()
                        .comes("x", matters(customer), answer(CallAnswer.Kind.WILL_COME), TODAY.minusDays(1), TODAY))
                .isInstanceOf(BookException.class);
        assertThatThrownBy(() -> AskedMatter.parse("SAIL:" + visitId)).isInstanceOf(IllegalArgumentException.class);
        assertThat(all()).isEqualTo(before);
        assertThat(book.appointments().list(TODAY.minusDays(2), TODAY)).isEmpty();
    }
}
