package cornerbook.app.book.year;

import java.time.YearMonth;

/** How much of something there is in a month; an expected number may be broken. */
public record MonthCount(YearMonth month, double count) {}
