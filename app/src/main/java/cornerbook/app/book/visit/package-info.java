/**
 * Visits and readings that come on top of those the book has, what is put right of them, and the re-torques that follow
 * from the wheels a car left on.
 */
@NullMarked
package cornerbook.app.book.visit;

import org.jspecify.annotations.NullMarked;
