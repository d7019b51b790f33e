package cornerbook.app.book.rack;

import org.jspecify.annotations.Nullable;

/**
 * A count of what lies in the store.
 *
 * @param ended null while it goes on
 * @param places that were looked at
 * @param sets that were scanned
 * @param differences what was found otherwise than the book had it; 0 while it goes on
 * @param open differences about which nobody has done anything yet
 */
public record StockCount(String id, By begun, @Nullable By ended, int places, int sets, int differences, int open) {}
