/**
 * Who is to be asked to come back, for what and by when, a customer a row; what came of asking is kept with all other answers of
 * customers.
 */
@NullMarked
package cornerbook.app.book.coming;

import org.jspecify.annotations.NullMarked;
