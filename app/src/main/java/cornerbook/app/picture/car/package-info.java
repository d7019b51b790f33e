/**
 * The car from above, and the ways of its wheels.
 */
@NullMarked
package cornerbook.app.picture.car;

import org.jspecify.annotations.NullMarked;
