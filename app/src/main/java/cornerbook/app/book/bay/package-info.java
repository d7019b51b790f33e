/**
 * What tablets enter at a visit beside readings, and what two of them read at one place.
 */
@NullMarked
package cornerbook.app.book.bay;

import org.jspecify.annotations.NullMarked;
