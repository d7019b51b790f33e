package cornerbook.app.desk.store;

import cornerbook.app.book.customer.Reach;
import cornerbook.app.book.rack.KeptSet;
import cornerbook.app.text.CsvLine;
import cornerbook.core.coming.Purpose;
import cornerbook.core.corner.SetOf;
import cornerbook.core.store.Place;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** All sets that are off their cars as comma-separated values: a line of names, then a line for each set. Days as ISO 8601. */
final class StockCsv {
    private StockCsv() {}

    static String of(Shelves shelves, Reach reach, Reader reader) {
        var labels = reader.labels("app/desk/store");
        var names = Stream.of(
                        "column-place",
                        "column-room",
                        "column-car",
                        "column-plate",
                        "column-customer",
                        "column-phone",
                        "column-set",
                        "column-wheels",
                        "column-since",
                        "column-out")
                .map(labels::of)
                .toList();
        return Stream.concat(
                        Stream.of(names),
                        shelves.sets().stream()
                                .filter(set -> !set.ran().onCar())
                                .map(set -> fields(shelves, reach, set, reader)))
                .map(CsvLine::of)
                .collect(Collectors.joining());
    }

    private static List<String> fields(Shelves shelves, Reach reach, KeptSet set, Reader reader) {
        var labels = reader.labels("app/desk/store");
        var owner = set.owner();
        var place = Objects.requireNonNullElse(set.place(), "");
        return List.of(
                place,
                shelves.map().find(place).map(Place::room).orElse(""),
                owner.vehicleName(),
                owner.plate(),
                owner.customerName(),
                reach.mayCall(owner.customerId(), Purpose.SEASON) ? Objects.requireNonNullElse(owner.phone(), "") : "",
                reader.say(new SetOf(set.season())),
                String.join(" ", set.tags()),
                Optional.ofNullable(shelves.since(set)).map(LocalDate::toString).orElse(""),
                labels.of(set.isOut() ? "out-yes" : "out-no"));
    }
}
