/**
 * Judges how likely a pad of the car seizes before the next visit. It knows when guides were cleaned and what was found.
 * The hazard stands in cornerbook.core.brake.seizing.
 */
@NullMarked
package cornerbook.core.brake.seizing.judge;

import org.jspecify.annotations.NullMarked;
