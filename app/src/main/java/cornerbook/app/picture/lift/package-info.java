/**
 * Pictures of a car on a hoist.
 */
@NullMarked
package cornerbook.app.picture.lift;

import org.jspecify.annotations.NullMarked;
