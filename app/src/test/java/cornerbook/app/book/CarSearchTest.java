package cornerbook.app.book;

import static org.assertj.core.api.Assertions.assertThat;

import cornerbook.app.book.car.VehicleSummary;
import cornerbook.app.demo.DemoShop;
import cornerbook.core.car.CarHistory;
import cornerbook.core.car.Customer;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cars found by what a person at the desk has of them. Cars and customers are invented. */
class CarSearchTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final List<CarHistory> SHOP = DemoShop.histories(TODAY);

    @AutoClose
    private Book book;

    @BeforeEach
    void oneCustomerHasAnAccent(@TempDir Path folder) {
        book = EmptyBook.open(folder);
        var first = SHOP.getFirst();
        var customer = new Customer(first.customer().id(), "Élodie Pré-Noël", "+1 819 555 0177", null, null);
        book.records()
                .addCars(Stream.concat(
                                Stream.of(new CarHistory(first.vehicle(), customer, first.sets(), first.visits())),
                                SHOP.stream().skip(1))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"elodie", "NOËL Élodie", "prénoël", "819-555-0177", "8195550177", "+1 819 555 0177", "  Pre  "})
    void accentsOrderAndPunctuationDoNotMatter(String query) {
        assertThat(found(query)).containsExactly(SHOP.getFirst().vehicle().id());
    }

    @Test
    void aPlateIsFoundHoweverItIsWritten() {
        for (var car : SHOP) {
            var plate = car.vehicle().plate();
            for (var written :
                    List.of(plate, plate.replace(" ", ""), plate.toLowerCase(Locale.ROOT), plate.replace(" ", "-"))) {
                assertThat(found(written)).as(written).contains(car.vehicle().id());
            }
        }
    }

    @Test
    void aTagASensorAndAPlaceInTheStoreLeadToTheCar() {
        for (var car : SHOP) {
            for (var set : car.sets()) {
                var place = set.storePlace();
                if (place != null) {
                    assertThat(found(place)).as(place).contains(car.vehicle().id());
                }
                for (var wheel : set.wheels()) {
                    assertThat(found(wheel.tag()))
                            .as(wheel.tag())
                            .contains(car.vehicle().id());
                    var sensor = wheel.sensorId();
                    if (sensor != null) {
                        assertThat(found(sensor))
                                .as(sensor)
                                .containsExactly(car.vehicle().id());
                    }
                }
            }
        }
    }

    @Test
    void whatNobodyHasIsNotFound() {
        assertThat(found("zzzz")).isEmpty();
        assertThat(found("elodie zzzz")).isEmpty();
        assertThat(found("%")).as("no letter and no digit: all cars").hasSize(SHOP.size());
        assertThat(found("_")).hasSize(SHOP.size());
    }

    /** As gloves type: a letter wrong, missing, too many, two swapped; the nearest letters of a keyboard are no reason to guess. */
    @ParameterizedTest
    @ValueSource(strings = {"elidie", "eloide", "elodiie", "eldie", "prenoal", "elodie prenoal", "8195550178"})
    void oneLetterWrongFindsWhatIsNear(String query) {
        var near = book.search().find(query, 0, 100);
        assertThat(near.near()).isTrue();
        assertThat(near.cars())
                .extracting(VehicleSummary::id)
                .contains(SHOP.getFirst().vehicle().id());
    }

    @Test
    void whatIsFoundAsItIsWrittenIsNotMixedWithWhatIsNear() {
        assertThat(book.search().find("elodie", 0, 100).near()).isFalse();
        assertThat(book.search().find("eladia", 0, 100).all())
                .as("two letters wrong")
                .isZero();
        assertThat(book.search().find("nul", 0, 100).all()).as("a short word").isZero();
    }

    /** The customer of two cars changes the name at one of them. */
    @Test
    void aChangedNameIsFoundAtOnceAndTheOldOneNoMore() {
        assertThat(found("elodie")).hasSize(1);
        var car = book.cars().find(SHOP.getFirst().vehicle().id()).orElseThrow();
        var renamed = new Customer(car.customer().id(), "Odette Brindamour", "+1 819 555 0188", null, null);
        long revision = book.cars().findRevision(car.vehicle().id()).orElseThrow();
        book.cars().change(new CarHistory(car.vehicle(), renamed, car.sets(), car.visits()), revision, TODAY);
        assertThat(found("brindamour")).containsExactly(car.vehicle().id());
        assertThat(found("elodie")).isEmpty();
    }

    @Test
    void aPageAfterTheOtherShowsEachCarOnce() {
        var all = found("");
        assertThat(IntStream.range(0, 3)
                        .boxed()
                        .flatMap(page -> book.search().find("", 5 * page, 5).cars().stream())
                        .map(VehicleSummary::id))
                .containsExactlyElementsOf(all);
        assertThat(book.search().find("", 5, 5).all()).isEqualTo(SHOP.size());
        assertThat(book.search().find("", 100, 5).cars()).isEmpty();
    }

    private List<String> found(String query) {
        return book.search().find(query, 0, 100).cars().stream()
                .map(VehicleSummary::id)
                .toList();
    }
}
