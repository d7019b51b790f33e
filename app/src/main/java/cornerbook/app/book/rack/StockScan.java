package cornerbook.app.book.rack;

import org.jspecify.annotations.Nullable;

/**
 * What was scanned in a count.
 *
 * @param place that was scanned before
 * @param code of a wheel; empty where only the place was looked at
 * @param key of the set that the wheel is of; null when the book knows no such wheel, or none was scanned
 */
public record StockScan(String place, String code, KeptSet.@Nullable Key key, By by) {}
