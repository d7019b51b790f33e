package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import cornerbook.app.InEnglish;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Reading;
import cornerbook.core.car.Visit;
import cornerbook.core.car.WheelSet;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new car whose readings or visits bear ids that the book has given to others: told of what stands first, and nothing is kept. */
class TakenReadingsTest {
    private static final List<CarHistory> CARS = DemoShop.histories(LocalDate.of(2026, 11, 25));

    private static final Visit THERE = CARS.getFirst().visits().getFirst();
    private static final String TAKEN = THERE.readings().getFirst().id();
    private static final String THE_READING = "The reading " + TAKEN + " of visit new-";

    @TempDir
    private Path folder;

    private static Reading called(String id, Reading like) {
        return new Reading(
                id,
                like.measure(),
                like.corner(),
                null,
                like.spot(),
                like.value(),
                like.asWritten(),
                like.corrects(),
                like.reason());
    }

    /** A reading that is of no wheel and corrects nothing. */
    private static Reading plain(Visit visit) {
        return visit.readings().stream()
                .filter(reading -> reading.wheelTag() == null && reading.corrects() == null)
                .findFirst()
                .orElseThrow();
    }

    /** The second car of the shop without sets, with two visits of these ids and a reading each. */
    private static CarHistory car(String firstVisit, String firstReading, String secondVisit, String secondReading) {
        var like = CARS.get(1);
        var visits = new ArrayList<Visit>();
        var ids = List.of(firstVisit, secondVisit);
        var readings = List.of(firstReading, secondReading);
        for (int i = 0; i < ids.size(); i++) {
            var visit = like.visits().get(i);
            visits.add(new Visit(
                    ids.get(i),
                    visit.date(),
                    visit.odometerKm(),
                    Map.of(),
                    Map.of(),
                    List.of(called(readings.get(i), plain(visit))),
                    visit.card(),
                    Set.of()));
        }
        return new CarHistory(like.vehicle(), like.customer(), List.<WheelSet>of(), visits);
    }

    private void isRefused(CarHistory car, String sentence) {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(CARS.subList(0, 1));
            assertThatThrownBy(() -> book.records().addCars(List.of(CARS.get(2), car)))
                    .extracting(InEnglish::told, STRING)
                    .contains(sentence);
            assertThat(book.search().find("", 0, 10).all()).isEqualTo(1);
            assertThat(book.check()).isEmpty();
        }
    }

    @Test
    void aReadingIsTaken() {
        isRefused(car("new-1", "new-r1", "new-2", TAKEN), THE_READING);
    }

    @Test
    void aReadingOfTheFirstVisitIsToldBeforeTheSecondVisit() {
        isRefused(car("new-1", TAKEN, THERE.id(), "new-r2"), THE_READING + "1");
    }

    @Test
    void theFirstVisitIsToldBeforeItsReadings() {
        isRefused(car(THERE.id(), TAKEN, "new-2", "new-r2"), "The visit " + THERE.id() + " of car");
    }

    @Test
    void aReadingIsTakenByACarThatComesWithIt() {
        try (var book = EmptyBook.open(folder)) {
            var first = CARS.getFirst();
            assertThatThrownBy(() -> book.records().addCars(List.of(first, car("new-1", "new-r1", "new-2", TAKEN))))
                    .extracting(InEnglish::told, STRING)
                    .contains(THE_READING);
        }
    }
}
