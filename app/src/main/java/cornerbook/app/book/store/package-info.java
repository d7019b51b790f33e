/**
 * Opens the file or the database, brings it up to date, and says in one sentence why it cannot be used. What every
 * ledger writes rows with is here too.
 */
@NullMarked
package cornerbook.app.book.store;

import org.jspecify.annotations.NullMarked;
