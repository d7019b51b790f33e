/**
 * Pictures of what days have to do.
 */
@NullMarked
package cornerbook.app.picture.days;

import org.jspecify.annotations.NullMarked;
