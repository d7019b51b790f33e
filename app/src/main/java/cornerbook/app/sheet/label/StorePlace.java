package cornerbook.app.sheet.label;

/**
 * Where a set is stored, as its labels say it.
 *
 * @param isProposed whether it lies nowhere yet, and the place is the one that is free for it
 */
public record StorePlace(String name, boolean isProposed) {}
