/** What the book keeps of the people whose cars it knows, given out or erased when they ask for it. */
@NullMarked
package cornerbook.app.book.customer;

import org.jspecify.annotations.NullMarked;
