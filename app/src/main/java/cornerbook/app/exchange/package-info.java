/**
 * The files that a car's history and its assessment travel in. A visit file is checked by its published schema, by the
 * units of its quantities and by the rules of a visit, and is refused with all that is wrong in it. Nothing here writes
 * to the book.
 */
@NullMarked
package cornerbook.app.exchange;

import org.jspecify.annotations.NullMarked;
