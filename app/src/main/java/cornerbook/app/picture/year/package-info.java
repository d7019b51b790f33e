/**
 * Pictures of what a year comes to.
 */
@NullMarked
package cornerbook.app.picture.year;

import org.jspecify.annotations.NullMarked;
