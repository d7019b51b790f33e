/**
 * Pictures of tyre, tread and wheel.
 */
@NullMarked
package cornerbook.app.picture.tyre;

import org.jspecify.annotations.NullMarked;
