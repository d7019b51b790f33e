/**
 * Pictures of pressure, of its sensors and of the load that it carries.
 */
@NullMarked
package cornerbook.app.picture.air;

import org.jspecify.annotations.NullMarked;
