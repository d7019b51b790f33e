/**
 * The steps that were ticked at a visit, and which of them stand.
 */
@NullMarked
package cornerbook.app.book.work;

import org.jspecify.annotations.NullMarked;
