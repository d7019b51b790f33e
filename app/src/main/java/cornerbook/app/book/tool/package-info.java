/**
 * The tools of the shop, as they are now.
 */
@NullMarked
package cornerbook.app.book.tool;

import org.jspecify.annotations.NullMarked;
