/**
 * After how long the guides of a car's pads are best cleaned: so often that cleaning and seized pads together cost least. It knows
 * salt, prices and hazards, and no car. Method and sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.interval;

import org.jspecify.annotations.NullMarked;
