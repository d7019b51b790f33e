package cornerbook.app.book.move;

import cornerbook.app.book.backup.BookCounts;
import cornerbook.app.book.store.BookException;
import cornerbook.app.book.store.BookFile;
import cornerbook.app.book.store.BookServer;
import cornerbook.app.book.store.BookStore;
import cornerbook.app.book.store.ServerAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/**
 * Takes a whole book to a place that has none. What stands there is read again and compared, and only then kept; the book that
 * it came from stays as it was, and takes no entry meanwhile.
 */
public final class BookMove {
    /** As many rows go over the wire at once; a photo is one of them. */
    private static final int ROWS_AT_ONCE = 200;

    private BookMove() {}

    /**
     * Moves it.
     *
     * @param place a folder without a book, which is made when it is not there; or the address of a PostgreSQL database that is
     *     empty, or has a book without entries
     * @throws BookException when it has a book, or cannot take one
     */
    public static Moved move(BookStore from, String place) {
        return ServerAddress.is(place) ? toServer(from, place) : toFolder(from, Path.of(place));
    }

    private static Moved toServer(BookStore from, String address) {
        try (var server = BookServer.open(address)) {
            return move(from, server, ServerAddress.shown(address));
        }
    }

    private static Moved toFolder(BookStore from, Path folder) {
        if (Files.exists(folder.resolve(BookFile.NAME))) {
            throw BookException.ofBackup(new MoveSaid.HasBook(folder.toString()), null);
        }
        return BookFile.make(folder, made -> move(from, made, folder.toString()));
    }

    private static Moved move(BookStore from, BookStore target, String name) {
        // A writer's turn: nobody writes an entry that stays behind.
        return from.write(source -> target.write(made -> copy(source, made, name)));
    }

    private static Moved copy(Handle source, Handle target, String name) {
        var tables = Table.all(source);
        if (!hasNoEntries(target, tables)) {
            throw BookException.ofBackup(new MoveSaid.HasEntries(name), null);
        }
        long rows = 0;
        for (var table : tables) {
            copy(source, target, table);
            var there = sum(target, table);
            if (!there.isSameAs(sum(source, table))) {
                throw BookException.ofBackup(new MoveSaid.NotTheSame(name, table.name()), null);
            }
            rows += there.rows();
        }
        return new Moved(BookCounts.of(target), rows);
    }

    private static boolean hasNoEntries(Handle handle, List<Table> tables) {
        return tables.stream()
                .allMatch(table -> handle.select("select count(*) from " + table.name())
                        .mapTo(Long.class)
                        .one()
                        .equals(0L));
    }

    private static void copy(Handle source, Handle target, Table table) {
        try (var batch = target.prepareBatch(table.insertion())) {
            forEachRow(source, table.rowsInTurn(), row -> {
                for (int i = 0; i < row.length; i++) {
                    batch.bind(i, row[i]);
                }
                batch.add();
                if (batch.size() == ROWS_AT_ONCE) {
                    batch.execute();
                }
            });
            executeRest(batch);
        }
    }

    private static void executeRest(PreparedBatch batch) {
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    private static RowSum sum(Handle handle, Table table) {
        var sum = new RowSum();
        forEachRow(handle, table.rows(), sum::add);
        return sum;
    }

    private static void forEachRow(Handle handle, String select, Consumer<@Nullable Object[]> use) {
        try (var query = handle.createQuery(select)) {
            query.setFetchSize(ROWS_AT_ONCE)
                    .map((found, context) -> {
                        var row = new @Nullable Object[found.getMetaData().getColumnCount()];
                        for (int i = 0; i < row.length; i++) {
                            row[i] = found.getObject(i + 1);
                        }
                        return row;
                    })
                    .forEach(use);
        }
    }
}
