/**
 * Judges discs: thickness, variation, runout, rust and cracks. It knows the corner as it was read. Runout and thickness
 * are reckoned in cornerbook.core.brake.disc.
 */
@NullMarked
package cornerbook.core.brake.disc.judge;

import org.jspecify.annotations.NullMarked;
