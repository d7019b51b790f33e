package cornerbook.app.desk.cars;

import cornerbook.app.desk.Typed;
import cornerbook.app.exchange.NewCar;
import cornerbook.app.exchange.VisitFile;
import cornerbook.app.request.Told;
import cornerbook.core.corner.SeasonKind;
import cornerbook.words.Language;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A list of cars, a row each.
 *
 * @param columns what stands in each column; null where it is left out
 * @param season of the wheels that the cars stand on, where no column or cell tells; null when nothing was said
 */
record CarList(List<@Nullable ListColumn> columns, @Nullable SeasonKind season) {
    static final String WORDS = "app/desk/cars";

    CarList {
        columns = new ArrayList<>(columns);
    }

    /** As the heads of a list are called; the first of two that are called alike. */
    static List<@Nullable ListColumn> guess(List<String> heads) {
        var columns = new ArrayList<@Nullable ListColumn>();
        for (var head : heads) {
            var column = ListColumn.ofHead(head).orElse(null);
            columns.add(columns.contains(column) ? null : column);
        }
        return columns;
    }

    /**
     * What becomes of each row that is not empty.
     *
     * @param rows with the heads first
     * @param plates of the cars that the book has
     */
    List<ListedCar> read(List<List<String>> rows, Set<String> plates, LocalDate today) {
        var listed = new ArrayList<ListedCar>();
        var firstRows = new HashMap<String, Integer>();
        var owners = new HashMap<List<String>, String>();
        for (int i = 1; i < rows.size(); i++) {
            var cells = rows.get(i);
            if (cells.stream().allMatch(String::isEmpty)) {
                continue;
            }
            int row = i + 1;
            var values = values(cells);
            var plate = ListColumn.folded(values.getOrDefault(ListColumn.PLATE, ""));
            var first = plate.isEmpty() ? row : firstRows.computeIfAbsent(plate, any -> row);
            if (plates.contains(plate)) {
                listed.add(ListedCar.inBook(row, cells));
            } else if (first == row) {
                listed.add(car(row, cells, values, owners, today));
            } else {
                listed.add(ListedCar.unfit(row, cells, List.of(label("twice", "row", first))));
            }
        }
        return listed;
    }

    private Map<ListColumn, String> values(List<String> cells) {
        var values = new EnumMap<ListColumn, String>(ListColumn.class);
        for (int i = 0; i < Math.min(cells.size(), columns.size()); i++) {
            var column = columns.get(i);
            if (column != null && !cells.get(i).isEmpty()) {
                values.put(column, cells.get(i));
            }
        }
        return values;
    }

    private ListedCar car(
            int row,
            List<String> cells,
            Map<ListColumn, String> values,
            Map<List<String>, String> owners,
            LocalDate today) {
        var typed = new HashMap<String, String>();
        values.forEach((column, value) -> typed.put(column.pointer(), value));
        var problems = new ArrayList<String>();
        for (var column : List.of(ListColumn.PLATE, ListColumn.OWNER, ListColumn.SIZE)) {
            if (!values.containsKey(column)) {
                problems.add(label("cell-empty", "column", column.label()));
            }
        }
        for (var column : List.of(ListColumn.ELECTRIC, ListColumn.HYBRID, ListColumn.LANGUAGE)) {
            put(values, column, typed, problems);
        }
        var seasonCell = values.get(ListColumn.SEASON);
        var ownSeason = seasonCell == null
                ? Optional.ofNullable(season)
                : word(seasonCell, seasonNames()).map(SeasonKind::valueOf);
        if (ownSeason.isEmpty()) {
            problems.add(seasonCell == null ? label("no-season") : label("not-a-season", "cell", seasonCell));
        }
        if (!problems.isEmpty()) {
            return ListedCar.unfit(row, cells, problems);
        }
        var vehicleId = UUID.randomUUID().toString();
        var person = List.of(values.getOrDefault(ListColumn.OWNER, ""), values.getOrDefault(ListColumn.PHONE, ""));
        var customerId = owners.computeIfAbsent(person, any -> "owner-" + vehicleId);
        return switch (NewCar.read(vehicleId, customerId, typed, today)) {
            case VisitFile.Refused refused ->
                ListedCar.unfit(
                        row,
                        cells,
                        refused.problems().stream()
                                .map(problem -> Typed.sentence(Told.say(problem.message())))
                                .distinct()
                                .toList());
            case VisitFile.Read read ->
                ListedCar.fit(row, cells, NewCar.onItsWheels(read.history(), ownSeason.orElseThrow(), false));
        };
    }

    /** A cell that has one of a few words, in the word of the visit file. */
    private static void put(
            Map<ListColumn, String> values, ListColumn column, Map<String, String> typed, List<String> problems) {
        var cell = values.get(column);
        if (cell == null) {
            return;
        }
        var choices = column == ListColumn.LANGUAGE
                ? Arrays.stream(Language.values()).map(Language::tag).toList()
                : List.of("yes", "no");
        word(cell, choices)
                .ifPresentOrElse(
                        word -> typed.put(column.pointer(), word),
                        () -> problems.add(
                                label("not-a-word", "column", column.label(), "cell", cell, "kind", column.name())));
    }

    private static List<String> seasonNames() {
        return Arrays.stream(SeasonKind.values()).map(Enum::name).toList();
    }

    /** Which of these is meant by a word that people write for it, in any language. */
    private static Optional<String> word(String cell, List<String> choices) {
        var asked = ListColumn.folded(cell);
        return choices.stream()
                .filter(choice -> Arrays.stream(Language.values())
                        .flatMap(language -> Arrays.stream(Told.reader()
                                .in(language)
                                .labels(WORDS)
                                .of("words", "choice", choice)
                                .split(";", -1)))
                        .anyMatch(name -> ListColumn.folded(name).equals(asked)))
                .findFirst();
    }

    private static String label(String key, Object... facts) {
        return Told.labels(WORDS).of(key, facts);
    }
}
