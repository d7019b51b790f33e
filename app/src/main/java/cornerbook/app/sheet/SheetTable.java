package cornerbook.app.sheet;

import cornerbook.words.Labels;
import java.util.List;

/** A table with a title to each column; the first cell of a row names it. */
public record SheetTable(List<String> columns, List<List<String>> rows) {
    public SheetTable {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    static SheetTable of(Labels labels, List<String> columns, List<List<String>> rows) {
        return new SheetTable(columns.stream().map(labels::of).toList(), rows);
    }
}
