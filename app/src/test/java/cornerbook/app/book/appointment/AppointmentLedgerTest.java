package cornerbook.app.book.appointment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.Book;
import cornerbook.app.book.EmptyBook;
import cornerbook.app.book.appointment.Appointment.Because;
import cornerbook.app.book.store.Arrival;
import cornerbook.app.book.store.BookException;
import cornerbook.app.door.ServedShop;
import cornerbook.core.car.JobCard;
import cornerbook.core.car.Visit;
import cornerbook.core.days.PlannedWork;
import cornerbook.core.say.Said;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Appointments of an invented car. */
class AppointmentLedgerTest {
    private static final String CAR = "demo-03";
    private static final LocalDate TODAY = ServedShop.TODAY;
    private static final LocalDate FRIDAY = TODAY.plusDays(2);
    private static final LocalDate MONDAY = TODAY.plusDays(5);

    @AutoClose
    private Book book;

    private AppointmentLedger ledger;

    @BeforeEach
    void open(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        book.records().addCar(ServedShop.car(CAR));
        ledger = book.appointments();
    }

    @Test
    void movedItStandsOnItsNewDayAndTheOldOneIsKept() {
        book("a", FRIDAY);
        ledger.change("b", "a", 0, plan(MONDAY), because("parts are late"), TODAY);
        assertThat(ledger.list(FRIDAY, FRIDAY)).isEmpty();
        assertThat(ledger.list(MONDAY, MONDAY)).singleElement().satisfies(each -> {
            assertThat(each.state()).isEqualTo(AppointmentState.BOOKED);
            assertThat(each.because().reason()).isEqualTo("parts are late");
        });
        assertThat(ledger.listTurns("a")).extracting(turn -> turn.plan().day()).containsExactly(FRIDAY, MONDAY);
    }

    @Test
    void calledOffAndMissedStayInTheBook() {
        book("a", FRIDAY);
        ledger.callOff("b", "a", 0, because("sold the car"));
        book("c", TODAY);
        ledger.miss("d", "c", 0, because(null), TODAY);
        assertThat(ledger.listOf(CAR))
                .extracting(Appointment::state)
                .containsExactly(AppointmentState.CALLED_OFF, AppointmentState.MISSED);
        ledger.change("e", "c", 1, plan(MONDAY), because("forgot it"), TODAY);
        assertThat(ledger.find("c").orElseThrow().state()).isEqualTo(AppointmentState.BOOKED);
        assertThat(ledger.listTurns("c"))
                .extracting(Appointment::state)
                .containsExactly(AppointmentState.BOOKED, AppointmentState.MISSED, AppointmentState.BOOKED);
    }

    @Test
    void aVisitOfThatDaySaysThatTheCarCame() {
        book("a", FRIDAY);
        open("visit", TODAY.plusDays(1));
        assertThat(ledger.find("a").orElseThrow().state())
                .as("the day before is no visit of that day")
                .isEqualTo(AppointmentState.BOOKED);
        open("visit-2", FRIDAY);
        assertThat(ledger.find("a").orElseThrow())
                .extracting(Appointment::state, Appointment::visitId)
                .containsExactly(AppointmentState.CAME, "visit-2");
        refused(() -> ledger.miss("b", "a", 0, because(null), FRIDAY), AppointmentSaid.HasCome.class);
        book.visits().cancel("visit-2", new cornerbook.app.book.visit.Because(null, "wrong car", "Ines", FRIDAY));
        assertThat(ledger.find("a").orElseThrow().state())
                .as("a visit that was opened by mistake is none")
                .isEqualTo(AppointmentState.BOOKED);
    }

    @Test
    void whoCameLateHasCome() {
        book("a", TODAY);
        ledger.miss("b", "a", 0, because(null), TODAY);
        open("visit", TODAY);
        assertThat(ledger.find("a").orElseThrow().state()).isEqualTo(AppointmentState.CAME);
    }

    @Test
    void whatIsSentAgainCountsOnceAndWhatOthersChangedIsSaid() {
        book("a", FRIDAY);
        assertThat(ledger.make("a", CAR, AppointmentState.BOOKED, plan(FRIDAY), because(null), TODAY))
                .isEqualTo(Arrival.ALREADY);
        ledger.change("b", "a", 0, plan(MONDAY), because("rain"), TODAY);
        assertThat(ledger.change("b", "a", 0, plan(MONDAY), because("rain"), TODAY))
                .isEqualTo(Arrival.ALREADY);
        refused(() -> ledger.callOff("c", "a", 0, because("rain")), AppointmentSaid.ChangedMeanwhile.class);
        assertThat(ledger.listTurns("a")).hasSize(2);
    }

    @Test
    void whatCannotBeIsRefusedAndChangesNothing() {
        book("a", FRIDAY);
        refused(() -> book("b", FRIDAY), AppointmentSaid.AlreadyThatDay.class);
        refused(() -> book("b", TODAY.minusDays(1)), AppointmentSaid.DayIsPast.class);
        refused(() -> book("b", TODAY.plusYears(2).plusDays(1)), AppointmentSaid.DayTooFar.class);
        refused(
                () -> ledger.change("b", "a", 0, plan(MONDAY), because(" "), TODAY),
                AppointmentSaid.ReasonMissing.class);
        refused(() -> ledger.callOff("b", "a", 0, because(null)), AppointmentSaid.ReasonMissing.class);
        refused(() -> ledger.miss("b", "a", 0, because(null), TODAY), AppointmentSaid.NotYetMissed.class);
        refused(() -> ledger.callOff("b", "nothing", 0, because("rain")), AppointmentSaid.NoAppointment.class);
        assertThat(ledger.listOf(CAR)).extracting(Appointment::turn).containsExactly(0);
    }

    @Test
    void aDayThatWasAskedForIsConfirmed() {
        ledger.make("a", CAR, AppointmentState.ASKED, plan(FRIDAY), because(null), TODAY);
        ledger.change("b", "a", 0, plan(MONDAY), because("no hoist"), TODAY);
        assertThat(ledger.find("a").orElseThrow().state()).isEqualTo(AppointmentState.ASKED);
        ledger.confirm("c", "a", 1, because(null));
        assertThat(ledger.find("a").orElseThrow().state()).isEqualTo(AppointmentState.BOOKED);
    }

    @Test
    void twoClashWhereOneHoistIsWantedTwiceAtATime() {
        var first = at(9, 0, 60, "H-1");
        assertThat(first.clashesWith(at(9, 59, 15, "H-1"))).isTrue();
        assertThat(at(9, 59, 15, "H-1").clashesWith(first)).isTrue();
        assertThat(first.clashesWith(at(10, 0, 15, "H-1")))
                .as("one begins as the other ends")
                .isFalse();
        assertThat(first.clashesWith(at(9, 0, 60, "H-2"))).isFalse();
        assertThat(first.clashesWith(at(9, 0, 60, null))).isFalse();
        assertThat(at(23, 30, 90, "H-1").clashesWith(at(0, 15, 30, "H-1")))
                .as("of the same day")
                .isFalse();
    }

    private static Plan at(int hour, int minute, int minutes, @Nullable String hoist) {
        return new Plan(FRIDAY, LocalTime.of(hour, minute), PlannedWork.WHEELS, minutes, hoist, null, "");
    }

    private void open(String visitId, LocalDate day) {
        var odometerKm = ServedShop.car(CAR).visits().getLast().odometerKm() + 500;
        book.visits()
                .add(
                        CAR,
                        new Visit(
                                visitId,
                                day,
                                odometerKm,
                                Map.of(),
                                Map.of(),
                                List.of(),
                                new JobCard(null, List.of(), null, null, List.of()),
                                Set.of()));
    }

    private void book(String id, LocalDate day) {
        ledger.make(id, CAR, AppointmentState.BOOKED, plan(day), because(null), TODAY);
    }

    private static Plan plan(LocalDate day) {
        return new Plan(day, null, PlannedWork.WHEELS, 35, null, null, "");
    }

    private static Because because(@Nullable String reason) {
        return new Because(reason, "Ines", Instant.parse("2026-11-25T12:00:00Z"));
    }

    private static void refused(ThrowingCallable change, Class<? extends Said> why) {
        assertThatThrownBy(change)
                .isInstanceOfSatisfying(
                        BookException.class,
                        refusal -> assertThat(refusal.said()).isInstanceOf(why));
    }
}
