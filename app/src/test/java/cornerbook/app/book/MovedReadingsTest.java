package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import cornerbook.app.book.store.BookException;
import cornerbook.app.book.visit.Because;
import cornerbook.core.brake.BrakeSpecification;
import cornerbook.core.car.AxleSpecification;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import cornerbook.core.car.Measure;
import cornerbook.core.car.Reading;
import cornerbook.core.car.StandingReadings;
import cornerbook.core.car.Tyre;
import cornerbook.core.car.Vehicle;
import cornerbook.core.car.VehicleDetails;
import cornerbook.core.car.Visit;
import cornerbook.core.car.Wheel;
import cornerbook.core.car.WheelSet;
import cornerbook.core.corner.Corner;
import cornerbook.core.corner.SeasonKind;
import cornerbook.core.corner.Spot;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was read at the wrong car goes to the right one, and is kept where it was entered. Both cars are bare and invented. */
class MovedReadingsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final Because MIXED_UP = new Because(null, "the cars were mixed up", "Ilse Vantour", DAY);

    @Test
    void aReadingGoesToTheSameCornerOfTheRightCarAndIsKeptStruck(@TempDir Path folder) {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car("wrong"), car("right")));
            book.readings().add("wrong-v", List.of(tread("a", 5.1, null), tread("b", 5.4, "a"), pad("c", 6)));

            book.readings().move("wrong-v", Set.of("b"), "right-v", MIXED_UP);

            assertThat(book.visits().find("wrong-v").orElseThrow().readings())
                    .as("with what it corrected")
                    .extracting(Reading::id)
                    .containsExactly("c");
            assertThat(book.visits().find("right-v").orElseThrow().readings())
                    .singleElement()
                    .satisfies(moved -> {
                        assertThat(moved.value()).isEqualTo(5.4);
                        assertThat(moved.wheelTag()).isEqualTo("right-LF");
                        assertThat(moved.corrects()).isNull();
                    });
            assertThat(book.visits().listChanges("wrong")).singleElement().satisfies(change -> {
                assertThat(change.what()).isEqualTo("reading");
                assertThat(change.before()).isEqualTo("TREAD_DEPTH LF INNER 5.4 mm");
                assertThat(change.after()).isEqualTo("right");
                assertThat(change.person()).isEqualTo("Ilse Vantour");
            });
            assertThat(book.readings().find("b")).as("never erased").isPresent();

            book.readings().add("wrong-v", List.of(tread("b", 5.4, "a"), pad("d", 5.5, "c")));
            assertThat(book.visits().find("wrong-v").orElseThrow().readings())
                    .as("one that a tablet sends again counts once; a new one stands behind")
                    .extracting(Reading::id)
                    .containsExactly("c", "d");
        }
    }

    @Test
    void aReadingGoesToTheWheelAtAnotherCornerOfTheSameCar(@TempDir Path folder) {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car("wrong")));
            book.readings().add("wrong-v", List.of(tread("a", 5.1, null)));

            book.readings().move("wrong-v", Set.of("a"), "wrong-v", Corner.RF, false, MIXED_UP);

            assertThat(book.visits().find("wrong-v").orElseThrow().readings())
                    .singleElement()
                    .satisfies(moved -> {
                        assertThat(moved.corner()).isEqualTo(Corner.RF);
                        assertThat(moved.wheelTag()).isEqualTo("wrong-RF");
                    });
            assertThat(book.visits().listChanges("wrong"))
                    .singleElement()
                    .satisfies(change -> assertThat(change.after()).isEqualTo("RF"));
            var moved = book.visits().find("wrong-v").orElseThrow().readings().getFirst();
            assertThatThrownBy(() ->
                            book.readings().move("wrong-v", Set.of(moved.id()), "wrong-v", Corner.RF, false, MIXED_UP))
                    .as("it is there")
                    .isInstanceOf(BookException.class);
        }
    }

    @Test
    void whatWasReadThereIsNotWrittenOverUnlessSomebodySaysSo(@TempDir Path folder) {
        try (var book = Book.open(folder)) {
            book.records().addCars(List.of(car("wrong")));
            book.readings().add("wrong-v", List.of(tread("a", 5.1, null)));
            book.readings().move("wrong-v", Set.of("a"), "wrong-v", Corner.RF, false, MIXED_UP);
            book.readings().add("wrong-v", List.of(tread("b", 4.4, null)));

            assertThatThrownBy(
                            () -> book.readings().move("wrong-v", Set.of("b"), "wrong-v", Corner.RF, false, MIXED_UP))
                    .isInstanceOf(BookException.class);
            assertThat(new StandingReadings(book.visits().find("wrong-v").orElseThrow()).all())
                    .extracting(Reading::value)
                    .containsExactlyInAnyOrder(5.1, 4.4);

            book.readings().move("wrong-v", Set.of("b"), "wrong-v", Corner.RF, true, MIXED_UP);
            var visit = book.visits().find("wrong-v").orElseThrow();
            assertThat(new StandingReadings(visit).all()).singleElement().satisfies(moved -> {
                assertThat(moved.value()).isEqualTo(4.4);
                assertThat(moved.reason()).isEqualTo(MIXED_UP.reason());
            });
            assertThat(visit.readings()).as("what it corrects stays").hasSize(2);
        }
    }

    @Test
    void whatStandsNoMoreOrHasNoReasonIsNotMoved(@TempDir Path folder) {
        try (var book = EmptyBook.open(folder)) {
            book.records().addCars(List.of(car("wrong"), car("right")));
            book.readings().add("wrong-v", List.of(tread("a", 5.1, null), tread("b", 5.4, "a")));
            for (var ids : List.of(Set.of("a"), Set.of("nobody's"), Set.<String>of())) {
                assertThatThrownBy(() -> book.readings().move("wrong-v", ids, "right-v", MIXED_UP))
                        .isInstanceOf(BookException.class);
            }
            assertThatThrownBy(() -> book.readings()
                            .move("wrong-v", Set.of("b"), "right-v", new Because(null, " ", "Ilse Vantour", DAY)))
                    .isInstanceOf(BookException.class);
            assertThat(book.visits().find("right-v").orElseThrow().readings()).isEmpty();
            assertThat(book.visits().find("wrong-v").orElseThrow().readings()).hasSize(2);
        }
    }

    private static Reading tread(String id, double depthMm, @Nullable String corrects) {
        return new Reading(
                id,
                Measure.TREAD_DEPTH,
                Corner.LF,
                "wrong-LF",
                Spot.INNER,
                depthMm,
                depthMm + " mm",
                corrects,
                corrects == null ? null : "read again");
    }

    private static Reading pad(String id, double thicknessMm) {
        return pad(id, thicknessMm, null);
    }

    private static Reading pad(String id, double thicknessMm, @Nullable String corrects) {
        return new Reading(
                id,
                Measure.PAD_THICKNESS,
                Corner.LF,
                null,
                Spot.INNER,
                thicknessMm,
                thicknessMm + " mm",
                corrects,
                corrects == null ? null : "read again");
    }

    private static CarHistory car(String id) {
        var axle = new AxleSpecification(null, "225/55R18", null, null, null, BrakeSpecification.NOT_KNOWN);
        var wheelAt = new EnumMap<Corner, String>(Corner.class);
        Arrays.stream(Corner.values()).forEach(corner -> wheelAt.put(corner, id + "-" + corner));
        return new CarHistory(
                new Vehicle(
                        id,
                        id,
                        id,
                        null,
                        null,
                        null,
                        Vehicle.ANY_PLACE,
                        axle,
                        axle,
                        null,
                        null,
                        null,
                        VehicleDetails.NOT_KNOWN),
                new Customer("owner of " + id, "Tamsin Orlavet", null, null),
                List.of(new WheelSet(
                        id + "-A",
                        SeasonKind.SUMMER,
                        null,
                        wheelAt.values().stream()
                                .map(tag -> new Wheel(tag, Tyre.ofSize("225/55R18"), null))
                                .toList())),
                List.of(new Visit(id + "-v", DAY, 30_000, wheelAt, Map.of(), List.of())));
    }
}
