package cornerbook.app.desk.out;

import cornerbook.app.exchange.table.TableForm;
import org.jspecify.annotations.Nullable;

/** As what the book is taken out. */
public enum OutKind {
    /** A visit file for each car, with all that the book has of it. */
    VISIT_FILES("visit-files", null),
    PARQUET("tables-parquet", TableForm.PARQUET),
    CSV("tables-csv", TableForm.CSV);

    private final String fileName;
    private final @Nullable TableForm tables;

    OutKind(String fileName, @Nullable TableForm tables) {
        this.fileName = fileName;
        this.tables = tables;
    }

    /** Stands in the name of the file that a browser keeps. */
    String fileName() {
        return fileName;
    }

    /** How its tables are written; null where it is visit files. */
    @Nullable
    TableForm tables() {
        return tables;
    }
}
