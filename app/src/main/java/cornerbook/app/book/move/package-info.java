/**
 * A whole book taken to another place, from a folder to a server or back, and compared there row by row.
 */
@NullMarked
package cornerbook.app.book.move;

import org.jspecify.annotations.NullMarked;
