package cornerbook.app.book.coming;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.InEnglish;
import cornerbook.app.book.Book;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.appointment.AppointmentState;
import cornerbook.app.book.appointment.Plan;
import cornerbook.app.book.coming.ComingLedger.Days;
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
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who of the invented shop's customers is to be asked to come back. */
class ComingLedgerTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T14:00:00Z");
    private static final Days YEAR = Days.until(TODAY.plusYears(1), TODAY);

    @AutoClose
    private Book book;

    @BeforeEach
    void judgeTheShop(@TempDir Path folder) {
        book = Book.open(folder);
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
                .containsExactlyInAnyOrderElementsOf(
                        Stream.concat(judged, retorques).toList());
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
