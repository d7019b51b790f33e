package cornerbook.app.book.year;

import java.time.Month;

/**
 * How pads moved that were tried in a month of any year.
 *
 * @param tried pads, each once a visit
 * @param stuck those of them that were seized
 */
public record PadsOfMonth(Month month, int tried, int stuck) {}
