/**
 * Which cars are to come on which day, and what was moved and called off.
 */
@NullMarked
package cornerbook.app.book.appointment;

import org.jspecify.annotations.NullMarked;
