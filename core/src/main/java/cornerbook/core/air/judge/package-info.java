/**
 * Judges pressure: found against set and placard, lost since the last visit, and what the sensors of the wheels say. It
 * knows gauges and the climate of the place. What air does stands in cornerbook.core.air.
 */
@NullMarked
package cornerbook.core.air.judge;

import org.jspecify.annotations.NullMarked;
