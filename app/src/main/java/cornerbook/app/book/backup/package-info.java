/**
 * A copy of the whole book, sealed, checked and put back; and what is wrong with a book, one sentence each.
 */
@NullMarked
package cornerbook.app.book.backup;

import org.jspecify.annotations.NullMarked;
