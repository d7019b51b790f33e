/**
 * Pictures of pads and discs.
 */
@NullMarked
package cornerbook.app.picture.brake;

import org.jspecify.annotations.NullMarked;
