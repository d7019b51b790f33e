/**
 * Judges brake fluid by its boiling point and its age. It knows the grade that the vehicle asks for, and the visits at
 * which it was changed. The grades stand in cornerbook.core.brake.fluid.
 */
@NullMarked
package cornerbook.core.brake.fluid.judge;

import org.jspecify.annotations.NullMarked;
