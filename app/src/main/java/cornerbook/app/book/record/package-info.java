/**
 * A car with all that the book has of it, notes and photos too, to go from one book to another.
 */
@NullMarked
package cornerbook.app.book.record;

import org.jspecify.annotations.NullMarked;
