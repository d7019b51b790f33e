package cornerbook.app.desk.store;

import cornerbook.app.text.CsvLine;
import cornerbook.core.corner.SetOf;
import cornerbook.words.Reader;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Sets that have to be brought as comma-separated values: a line of names, then a line for each set. Days as ISO 8601. */
final class BringCsv {
    private BringCsv() {}

    static String of(BringPage page, Reader reader) {
        var labels = reader.labels("app/desk/store");
        var names = Stream.of(
                        "column-ask-by",
                        "column-last-hour",
                        "column-room",
                        "column-place",
                        "column-car",
                        "column-plate",
                        "column-set",
                        "column-wheels",
                        "column-needed",
                        "column-state",
                        "column-comes")
                .map(labels::of)
                .toList();
        return Stream.concat(Stream.of(names), page.rows().stream().map(row -> fields(row, reader)))
                .map(CsvLine::of)
                .collect(Collectors.joining());
    }

    private static List<String> fields(BringPage.Row row, Reader reader) {
        var set = row.elsewhere().set();
        var appointment = row.appointment();
        return List.of(
                written(row.askBy()),
                Objects.toString(row.elsewhere().bringing().lastHour(), ""),
                row.elsewhere().place().room(),
                row.elsewhere().place().name(),
                set.owner().vehicleName(),
                set.owner().plate(),
                reader.say(new SetOf(set.season())),
                String.join(" ", set.tags()),
                written(appointment == null ? null : appointment.plan().day()),
                reader.say(row.elsewhere().step()),
                written(row.elsewhere().isHere() ? null : row.comes()));
    }

    private static String written(@Nullable LocalDate day) {
        return Optional.ofNullable(day).map(LocalDate::toString).orElse("");
    }
}
