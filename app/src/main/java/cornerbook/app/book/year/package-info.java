/**
 * What a year of the book comes to: visits and calls by month, what the cars that are due may need, pads that stuck, and cars that
 * were long not seen. It counts and keeps nothing.
 */
@NullMarked
package cornerbook.app.book.year;

import org.jspecify.annotations.NullMarked;
