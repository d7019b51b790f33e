/**
 * Judges drums and the lining of their shoes: what is left of both, cracks, and what must not be on them. What moves the shoes is judged
 * with the calipers in cornerbook.core.brake.caliper. Sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.drum.judge;

import org.jspecify.annotations.NullMarked;
