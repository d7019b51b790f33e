package cornerbook.app.book.bill;

import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * What is charged for, as the customer reads it.
 *
 * @param key the matter that was agreed; null for what was added within what the place allows
 * @param amount before taxes; below nothing where it is given back
 */
public record BillLine(@Nullable String key, String words, String detail, Money amount) {}
