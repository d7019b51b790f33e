package cornerbook.app.exchange.table;

import static cornerbook.app.exchange.table.TableColumn.personal;
import static cornerbook.app.parquet.ParquetColumn.Kind.DAY;
import static cornerbook.app.parquet.ParquetColumn.Kind.FLAG;
import static cornerbook.app.parquet.ParquetColumn.Kind.MOMENT;
import static cornerbook.app.parquet.ParquetColumn.Kind.NUMBER;
import static cornerbook.app.parquet.ParquetColumn.Kind.TEXT;
import static cornerbook.app.parquet.ParquetColumn.Kind.WHOLE;

import cornerbook.app.book.out.CarRows;
import cornerbook.app.book.out.CarRows.WheelRow;
import cornerbook.app.book.out.VisitRows;
import cornerbook.app.book.out.VisitRows.Person;
import cornerbook.app.book.out.VisitRows.ReadingRow;
import cornerbook.app.book.out.VisitRows.TickRow;
import cornerbook.core.tool.ShopTool;
import cornerbook.core.tool.judge.ToolFindings;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The tables of the book and their columns. */
final class BookTables {
    /** One table after the other; what each column holds stands in docs/tables.md. */
    static final List<BookTable<?>> ALL = List.of(cars(), wheels(), visits(), readings(), work());

    private BookTables() {}

    private record OfCar<R>(CarRows car, R row) {}

    private record OfVisit<R>(CarRows car, VisitRows visit, R row) {}

    private static BookTable<CarRows> cars() {
        return new BookTable<>(
                "cars",
                List.of(
                        TableColumn.of("car", WHOLE, CarRows::number),
                        TableColumn.of("name", TEXT, CarRows::name),
                        TableColumn.of("drive", TEXT, car -> name(car.drive())),
                        TableColumn.of("electric", FLAG, CarRows::electric),
                        TableColumn.of("jurisdiction", TEXT, CarRows::jurisdiction),
                        personal("car_id", CarRows::id),
                        personal("plate", CarRows::plate),
                        personal("vin", CarRows::vin),
                        personal("customer_name", CarRows::customer)),
                Stream::of);
    }

    private static BookTable<OfCar<WheelRow>> wheels() {
        return new BookTable<>(
                "wheels",
                List.of(
                        TableColumn.of("car", WHOLE, each -> each.car().number()),
                        TableColumn.of("set", WHOLE, each -> each.row().set()),
                        TableColumn.of("wheel", WHOLE, each -> each.row().number()),
                        TableColumn.of(
                                "season", TEXT, each -> each.row().season().name()),
                        TableColumn.of("tyre_model", TEXT, each -> each.row().tyreModel()),
                        TableColumn.of("tyre_size", TEXT, each -> each.row().tyreSize()),
                        TableColumn.of(
                                "new_depth_mm", NUMBER, each -> each.row().newDepthMm()),
                        personal("wheel_tag", each -> each.row().tag())),
                car -> car.wheels().stream().map(wheel -> new OfCar<>(car, wheel)));
    }

    private static BookTable<OfCar<VisitRows>> visits() {
        return new BookTable<>(
                "visits",
                List.of(
                        TableColumn.of("car", WHOLE, each -> each.car().number()),
                        TableColumn.of("visit", WHOLE, each -> each.row().number()),
                        TableColumn.of("day", DAY, each -> each.row().day()),
                        TableColumn.of("odometer_km", NUMBER, each -> each.row().odometerKm()),
                        TableColumn.of("cancelled", FLAG, each -> each.row().cancelled()),
                        TableColumn.of(
                                "technician", WHOLE, each -> code(each.row().technician())),
                        TableColumn.of("hoist", TEXT, each -> tool(each.row(), ShopTool.Kind.HOIST)),
                        personal("visit_id", each -> each.row().id()),
                        personal("technician_name", each -> name(each.row().technician()))),
                car -> car.visits().stream().map(visit -> new OfCar<>(car, visit)));
    }

    private static BookTable<OfVisit<ReadingRow>> readings() {
        return new BookTable<>(
                "readings",
                List.of(
                        TableColumn.of("car", WHOLE, each -> each.car().number()),
                        TableColumn.of("visit", WHOLE, each -> each.visit().number()),
                        TableColumn.of("reading", WHOLE, each -> each.row().number()),
                        TableColumn.of("day", DAY, each -> each.visit().day()),
                        TableColumn.of(
                                "odometer_km", NUMBER, each -> each.visit().odometerKm()),
                        TableColumn.of(
                                "measure",
                                TEXT,
                                each -> each.row().reading().measure().name()),
                        TableColumn.of(
                                "corner",
                                TEXT,
                                each -> name(each.row().reading().corner())),
                        TableColumn.of(
                                "spot", TEXT, each -> name(each.row().reading().spot())),
                        TableColumn.of("set", WHOLE, each -> ofWheel(each.row().wheel(), WheelRow::set)),
                        TableColumn.of(
                                "wheel", WHOLE, each -> ofWheel(each.row().wheel(), WheelRow::number)),
                        TableColumn.of(
                                "value", NUMBER, each -> each.row().reading().value()),
                        TableColumn.of("unit", TEXT, each -> unit(each.row())),
                        TableColumn.of("word", TEXT, each -> word(each.row())),
                        TableColumn.of(
                                "as_written", TEXT, each -> each.row().reading().asWritten()),
                        TableColumn.of(
                                "gauge",
                                TEXT,
                                each -> gauge(each).map(ShopTool::id).orElse(null)),
                        TableColumn.of(
                                "gauge_shows_too_much",
                                NUMBER,
                                each -> gauge(each).map(ShopTool::offset).orElse(null)),
                        TableColumn.of("state", TEXT, each -> each.row().state().name()),
                        TableColumn.of("corrects", WHOLE, each -> each.row().corrects()),
                        TableColumn.of("person", WHOLE, each -> code(each.row().person())),
                        TableColumn.of("entered_at", MOMENT, each -> each.row().enteredAt()),
                        personal("reading_id", each -> each.row().reading().id()),
                        personal("wheel_tag", each -> each.row().reading().wheelTag()),
                        personal("person_name", each -> name(each.row().person())),
                        personal("reason", each -> each.row().reading().reason())),
                car -> car.visits().stream()
                        .flatMap(visit -> visit.readings().stream().map(row -> new OfVisit<>(car, visit, row))));
    }

    private static BookTable<OfVisit<TickRow>> work() {
        return new BookTable<>(
                "work",
                List.of(
                        TableColumn.of("car", WHOLE, each -> each.car().number()),
                        TableColumn.of("visit", WHOLE, each -> each.visit().number()),
                        TableColumn.of("tick", WHOLE, each -> each.row().number()),
                        TableColumn.of("day", DAY, each -> each.visit().day()),
                        TableColumn.of("step", TEXT, each -> each.row().tick().tick()),
                        TableColumn.of("set", WHOLE, each -> ofWheel(each.row().wheel(), WheelRow::set)),
                        TableColumn.of(
                                "wheel", WHOLE, each -> ofWheel(each.row().wheel(), WheelRow::number)),
                        TableColumn.of("done", FLAG, each -> each.row().tick().done()),
                        TableColumn.of("counts", FLAG, each -> each.row().tick().counts()),
                        TableColumn.of(
                                "person", WHOLE, each -> each.row().person().code()),
                        TableColumn.of(
                                "entered_at", MOMENT, each -> each.row().tick().madeAt()),
                        personal("tick_id", each -> each.row().tick().id()),
                        personal("person_name", each -> each.row().person().name()),
                        personal("reason", each -> each.row().tick().reason())),
                car -> car.visits().stream()
                        .flatMap(visit -> visit.ticks().stream().map(row -> new OfVisit<>(car, visit, row))));
    }

    private static @Nullable Integer ofWheel(@Nullable WheelRow wheel, Function<WheelRow, Integer> number) {
        return wheel == null ? null : number.apply(wheel);
    }

    private static @Nullable String name(@Nullable Enum<?> constant) {
        return constant == null ? null : constant.name();
    }

    private static @Nullable String name(@Nullable Person person) {
        return person == null ? null : person.name();
    }

    private static @Nullable Integer code(@Nullable Person person) {
        return person == null ? null : person.code();
    }

    private static @Nullable String tool(VisitRows visit, ShopTool.Kind kind) {
        return visit.findTool(kind).map(ShopTool::id).orElse(null);
    }

    private static Optional<ShopTool> gauge(OfVisit<ReadingRow> each) {
        return ToolFindings.findKind(each.row().reading().measure()).flatMap(each.visit()::findTool);
    }

    /** None for a word: its value is a place in a list. */
    private static @Nullable String unit(ReadingRow row) {
        var measure = row.reading().measure();
        return measure.scale() == null ? measure.unit() : null;
    }

    private static @Nullable String word(ReadingRow row) {
        var scale = row.reading().measure().scale();
        return scale == null ? null : scale.wordOf(row.reading().value());
    }
}
