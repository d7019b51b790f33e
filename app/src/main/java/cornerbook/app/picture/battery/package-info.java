/**
 * Pictures of the 12 V battery.
 */
@NullMarked
package cornerbook.app.picture.battery;

import org.jspecify.annotations.NullMarked;
