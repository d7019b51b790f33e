/**
 * Judges pads: how long they hold, and why they wear unevenly. It knows the corner as it was read, and the limits.
 * Causes are reckoned in cornerbook.core.brake.pads.
 */
@NullMarked
package cornerbook.core.brake.pads.judge;

import org.jspecify.annotations.NullMarked;
