/**
 * The page of the shop's tools.
 */
@NullMarked
package cornerbook.app.desk.tools;

import org.jspecify.annotations.NullMarked;
