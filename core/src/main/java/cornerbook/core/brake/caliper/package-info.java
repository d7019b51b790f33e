/**
 * Judges calipers and the parking brake by what was felt and tried. It knows the corner as it was read. It has no model
 * of its own: a word on a scale is the verdict.
 */
@NullMarked
package cornerbook.core.brake.caliper;

import org.jspecify.annotations.NullMarked;
