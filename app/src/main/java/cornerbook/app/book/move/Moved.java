package cornerbook.app.book.move;

import cornerbook.app.book.backup.BookCounts;

/**
 * A book that stands in another place now.
 *
 * @param counts what is in it
 * @param rows how many rows of its tables were taken there and read again
 */
public record Moved(BookCounts counts, long rows) {}
