package cornerbook.app.book.backup;

import org.jdbi.v3.core.Handle;

/** How much is in a book. */
public record BookCounts(long cars, long visits, long readings, long photos) {
    public static BookCounts of(Handle handle) {
        return new BookCounts(
                count(handle, "vehicle"), count(handle, "visit"), count(handle, "reading"), count(handle, "photo"));
    }

    private static long count(Handle handle, String table) {
        return handle.select("select count(*) from " + table).mapTo(Long.class).one();
    }
}
