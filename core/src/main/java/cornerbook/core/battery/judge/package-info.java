/**
 * Judges the 12 V battery of a car by its readings from visit to visit. It knows the battery as the vehicle declares it.
 * What voltage and current mean stands in cornerbook.core.battery.
 */
@NullMarked
package cornerbook.core.battery.judge;

import org.jspecify.annotations.NullMarked;
