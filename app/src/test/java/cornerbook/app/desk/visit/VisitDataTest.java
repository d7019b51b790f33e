package cornerbook.app.desk.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import cornerbook.app.book.Book;
import cornerbook.app.book.visit.OpenRetorque;
import cornerbook.app.book.visit.VisitChange;
import cornerbook.app.book.work.Remark;
import cornerbook.app.desk.link.CarLinks;
import cornerbook.app.desk.link.VisitLinks;
import cornerbook.app.door.ServedShop;
import cornerbook.app.exchange.VisitFile;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Mileage;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Visit;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.Spot;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A date or an odometer that was typed wrongly is asked about, and is put right later. */
class VisitDataTest {
    private static final String CAR = "demo-03";
    private static final String ASKS = "the odometer read";

    @AutoClose
    private ServedShop shop;

    private Book book;
    private Visit last;

    @BeforeEach
    void open(@TempDir Path folder) {
        shop = new ServedShop(folder, List.of(ServedShop.car(CAR)));
        book = shop.book();
        last = car().visits().getLast();
    }

    private CarHistory car() {
        return book.cars().find(CAR).orElseThrow();
    }

    private String right(Visit visit) {
        return String.valueOf(visit.odometerKm());
    }

    private Map<String, String> form(Visit seen, Object date, Object odometerKm, String reason) {
        return new HashMap<>(Map.of(
                "seenDate", seen.date().toString(),
                "seenOdometer", right(seen),
                "date", date.toString(),
                "odometer", odometerKm.toString(),
                "reason", reason,
                "person", "Ada"));
    }

    private int put(Visit seen, Object date, Object odometerKm) throws Exception {
        var form = form(seen, date, odometerKm, "A slip");
        form.put("asked", odometerKm.toString());
        return shop.post(VisitLinks.visitData(seen.id()), form).statusCode();
    }

    @Test
    void whatTheCustomerSaysIsKeptAsTheVisitIsOpened() throws Exception {
        var visitId = UUID.randomUUID().toString();
        var form = new HashMap<>(Map.of(
                "visit",
                visitId,
                "date",
                ServedShop.TODAY.toString(),
                "odometer",
                right(last),
                "technician",
                "Ada",
                "COMPLAINT",
                "Pulls to the left"));
        assertThat(shop.post(CarLinks.newVisit(CAR), form).statusCode()).isEqualTo(303);
        assertThat(book.bay().findVisit(visitId).orElseThrow().notes().remarks())
                .extracting(Remark::topic, Remark::words, Remark::person)
                .containsExactly(tuple(Remark.Topic.COMPLAINT, "Pulls to the left", "Ada"));
    }

    @Test
    void anIncredibleOdometerOfANewVisitIsAskedAboutOnceAndThenStands() throws Exception {
        double wrongKm = 10 * last.odometerKm();
        var form = new HashMap<>(Map.of(
                "visit", UUID.randomUUID().toString(),
                "date", ServedShop.TODAY.toString(),
                "odometer", right(last.withOdometer(last.date(), wrongKm))));
        var asked = shop.post(CarLinks.newVisit(CAR), form);
        assertThat(asked.statusCode()).isEqualTo(422);
        assertThat(asked.body())
                .contains(ASKS, "Odometer, again", "value=\"" + wrongKm + "\"", "name=\"odometer\"")
                .containsPattern("id=\"odometer\"[^>]*value=\"\"");
        assertThat(car().visits()).hasSize(7);

        form.put("asked", String.valueOf(wrongKm));
        form.put("odometer", String.valueOf(wrongKm + 20_000));
        assertThat(shop.post(CarLinks.newVisit(CAR), form).body())
                .as("another value")
                .contains(ASKS);
        form.put("odometer", String.valueOf(wrongKm));
        assertThat(shop.post(CarLinks.newVisit(CAR), form).statusCode()).isEqualTo(303);
        assertThat(car().visits().getLast().odometerKm()).isEqualTo(wrongKm);

        form.put("visit", UUID.randomUUID().toString());
        form.put("odometer", right(last));
        assertThat(shop.post(CarLinks.newVisit(CAR), form).body())
                .as("less than the wrong one before it")
                .contains(ASKS, "Odometer replaced");
        form.put("asked", right(last));
        form.put("take", right(last) + " km");
        assertThat(shop.post(CarLinks.newVisit(CAR), form).statusCode()).isEqualTo(303);
        assertThat(car().visits()).hasSize(9);
        assertThat(shop.get(CarLinks.car(CAR)).body()).doesNotContain("−");
    }

    @Test
    void whatWasLikelyMeantIsOneTap() throws Exception {
        double rightKm = last.odometerKm() + 1_000;
        var form = new HashMap<>(Map.of(
                "visit", UUID.randomUUID().toString(),
                "date", ServedShop.TODAY.toString(),
                "odometer", "%.0f0".formatted(rightKm)));
        var take = "%.0f km".formatted(rightKm);
        assertThat(shop.post(CarLinks.newVisit(CAR), form).body())
                .contains("value=\"" + take + "\"", "a digit too many");
        form.put("odometer", "");
        form.put("take", take);
        assertThat(shop.post(CarLinks.newVisit(CAR), form).statusCode()).isEqualTo(303);
        assertThat(car().visits().getLast().odometerKm()).isEqualTo(rightKm);
    }

    /** It begins at zero, and what the old one read is asked for with it; the distance is known. */
    @Test
    void anOdometerThatWasReplacedIsAReadingOfItsOwn() throws Exception {
        var form = new HashMap<>(Map.of(
                "visit", UUID.randomUUID().toString(),
                "date", ServedShop.TODAY.toString(),
                "odometer", "120",
                "replacedOdometer", String.valueOf(last.odometerKm() + 300)));
        assertThat(shop.post(CarLinks.newVisit(CAR), form).statusCode()).isEqualTo(303);
        var visits = car().visits();
        var mileage = new Mileage(visits);
        assertThat(mileage.doubts()).isEmpty();
        assertThat(mileage.sinceFirstKm(visits.getLast()) - mileage.sinceFirstKm(visits.get(6)))
                .isCloseTo(420, within(1e-6));
    }

    /** The set was noted wrongly: what was read goes to the wheels that were there, and what stood is struck, not erased. */
    @Test
    void wheelsAndNotesArePutRightAndTheReadingsFollow() throws Exception {
        var open = visitOnOneSet();
        var other = car().sets().stream()
                .filter(set -> set.wheels().stream()
                        .noneMatch(wheel -> open.arrivedOn().containsValue(wheel.tag())))
                .findFirst()
                .orElseThrow();
        var form = form(open, open.date(), open.odometerKm(), "The other set");
        form.put("notes", "Came on the other set");
        for (var corner : Corner.values()) {
            form.put("came." + corner, other.wheels().get(corner.ordinal()).tag());
        }
        assertThat(shop.post(VisitLinks.visitData(open.id()), form).statusCode())
                .isEqualTo(303);

        var righted = shop.visit(open.id());
        var wheel = other.wheels().get(Corner.LF.ordinal()).tag();
        assertThat(righted.arrivedOn()).containsEntry(Corner.LF, wheel);
        assertThat(righted.card().notes()).isEqualTo("Came on the other set");
        assertThat(righted.readings()).hasSize(2);
        assertThat(new StandingReadings(righted).all()).singleElement().satisfies(reading -> {
            assertThat(reading.wheelTag()).isEqualTo(wheel);
            assertThat(reading.value()).isEqualTo(6.5);
            assertThat(reading.reason()).isEqualTo("The other set");
        });
        assertThat(book.visits().listChanges(CAR))
                .extracting(VisitChange::what, VisitChange::person)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("notes", "Ada"),
                        org.assertj.core.groups.Tuple.tuple("came on", "Ada"));
        assertThat(shop.get(VisitLinks.visit(open.id())).body())
                .contains("wheels it came on was", "(Ada: The other set)");
        assertThat(book.check()).isEmpty();
    }

    /** On its summer or winter set, one groove read. */
    private Visit visitOnOneSet() {
        var tag = last.leftOn().get(Corner.LF);
        var visit = new Visit(
                "open",
                ServedShop.TODAY,
                last.odometerKm() + 500,
                last.leftOn(),
                Map.of(),
                List.of(new Reading(
                        "groove", Measure.TREAD_DEPTH, Corner.LF, tag, Spot.OUTER, 6.5, "6.5 mm", null, null)));
        book.visits().add(CAR, visit);
        return visit;
    }

    @Test
    void whoPutsAVisitRightIsNamed() throws Exception {
        var form = form(last, last.date(), last.odometerKm() + 1, "A slip");
        form.remove("person");
        refused(form, "Your name is missing");
    }

    /** The car was locked: no odometer that is true could follow. */
    @Test
    void aWrongOdometerIsPutRightThoughAnotherVisitHasFollowed() throws Exception {
        var before = car().visits().get(5);
        double rightKm = last.odometerKm();
        assertThat(put(last, last.date(), 10 * rightKm)).isEqualTo(303);
        var later = new Visit("later", ServedShop.TODAY, 10 * rightKm + 300, Map.of(), Map.of(), List.of());
        book.visits().add(CAR, later);
        var wrong = car().getVisit(last.id());
        assertThat(put(wrong, wrong.date(), rightKm)).isEqualTo(303);
        assertThat(put(later, later.date(), rightKm + 30)).isEqualTo(303);
        assertThat(car().visits()).extracting(Visit::odometerKm).endsWith(before.odometerKm(), rightKm, rightKm + 30);
        assertThat(book.check()).isEmpty();
        var page = shop.get(VisitLinks.visit(last.id())).body();
        assertThat(page).contains("odometer was", "(Ada: A slip)", "Something wrong? Put it right");
    }

    @Test
    void whatStoodThereIsKeptWithTheReasonAndTravelsWithTheCar(@TempDir Path other) throws Exception {
        long revision = book.cars().findRevision(CAR).orElseThrow();
        var day = last.date().minusDays(1);
        assertThat(put(last, day, last.odometerKm() - 1)).isEqualTo(303);
        assertThat(book.cars().findRevision(CAR).orElseThrow()).isGreaterThan(revision);
        assertThat(book.visits().listChanges(CAR))
                .extracting(VisitChange::what, VisitChange::before, VisitChange::reason)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("date", last.date().toString(), "A slip"),
                        org.assertj.core.groups.Tuple.tuple(
                                "odometer", "%.0f km".formatted(last.odometerKm()), "A slip"));
        var file = VisitFile.write(book.records().find(CAR).orElseThrow());
        assertThat(file).contains("\"visitChanges\"", "A slip");
        try (var copy = Book.open(other)) {
            copy.records().add(List.of(((VisitFile.Read) VisitFile.read(file, ServedShop.TODAY)).record()));
            assertThat(VisitFile.write(copy.records().find(CAR).orElseThrow())).isEqualTo(file);
        }
    }

    @Test
    void whatCannotStandIsRefusedWithOneSentenceAndChangesNothing() throws Exception {
        var before = car();
        var earlier = before.visits().get(5);
        refused(form(last, last.date(), earlier.odometerKm() - 10, "A slip"), ASKS);
        refused(form(last, ServedShop.TODAY.plusDays(1), last.odometerKm(), "A slip"), "lies in the future");
        refused(form(last, last.date(), last.odometerKm() + 1, " "), "The reason is missing");
        refused(form(last, last.date(), "", "A slip"), "expected");
        refused(form(last, last.date(), 20 * last.odometerKm(), "A slip"), ASKS);
        var stale = last.withOdometer(last.date().minusDays(3), last.odometerKm());
        refused(form(stale, last.date().minusDays(1), last.odometerKm(), "A slip"), "somebody else");
        assertThat(car()).isEqualTo(before);
        assertThat(book.visits().listChanges(CAR)).isEmpty();
    }

    private void refused(Map<String, String> form, String part) throws Exception {
        var answer = shop.post(VisitLinks.visitData(last.id()), form);
        assertThat(answer.statusCode()).as(part).isEqualTo(422);
        assertThat(answer.body()).contains(part);
    }

    /** The visit moves before the one before it; the re-torque and what was superseded move with it. */
    @Test
    void aDateMovesTheVisitInOrderAndTheRetorqueFollows() throws Exception {
        assertThat(book.retorques().listOpen())
                .extracting(OpenRetorque::visitId)
                .containsExactly(last.id());
        var added = new Visit(
                "added",
                last.date().plusDays(2),
                last.odometerKm() + 50,
                /* arrivedOn= */ last.leftOn(),
                /* leftOn= */ last.arrivedOn(),
                List.of());
        book.visits().add(CAR, added);
        assertThat(book.retorques().listOpen())
                .extracting(OpenRetorque::visitId)
                .containsExactly("added");
        assertThat(put(added, last.date().minusDays(3), last.odometerKm() - 50)).isEqualTo(303);
        assertThat(car().visits()).extracting(Visit::id).endsWith("added", last.id());
        assertThat(book.retorques().listOpen())
                .extracting(OpenRetorque::visitId)
                .containsExactly(last.id());

        var due = book.retorques().listOpen().getFirst();
        assertThat(put(last, last.date(), last.odometerKm() + 7)).isEqualTo(303);
        assertThat(book.retorques().listOpen().getFirst().dueOdometerKm()).isEqualTo(due.dueOdometerKm() + 7);
    }

    @Test
    void theOdometerOfARetorqueIsAskedAboutToo() throws Exception {
        var form = new HashMap<>(Map.of(
                "date",
                ServedShop.TODAY.toString(),
                "odometer",
                right(last.withOdometer(last.date(), 2_000_000)),
                "torque",
                "120"));
        var asked = shop.post(VisitLinks.retorque(last.id()), form);
        assertThat(asked.body()).contains(ASKS, "name=\"asked\" value=\"2000000.0\"");
        form.put("odometer", String.valueOf(last.odometerKm() + 60));
        assertThat(shop.post(VisitLinks.retorque(last.id()), form).statusCode()).isEqualTo(303);
    }

    /** Shown in miles with one digit, the odometer keeps what the book has while only the date is changed. */
    @Test
    void aFieldThatWasNotTouchedKeepsItsValueInOtherUnits() throws Exception {
        var form = form(last, last.date().minusDays(1), "23456.7", "A slip");
        form.put("seen.odometer", "23456.7");
        form.put("units", "us");
        assertThat(shop.post(VisitLinks.visitData(last.id()), form).statusCode())
                .isEqualTo(303);
        assertThat(shop.visit(last.id()).odometerKm()).isEqualTo(last.odometerKm());
        assertThat(LocalDate.parse(form.get("date")))
                .isEqualTo(shop.visit(last.id()).date());
    }
}
