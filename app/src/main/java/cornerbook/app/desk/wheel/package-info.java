/**
 * The page of a wheel, and its label.
 */
@NullMarked
package cornerbook.app.desk.wheel;

import org.jspecify.annotations.NullMarked;
