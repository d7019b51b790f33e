/**
 * Judges whether a car can be lifted on the hoist that the visit used. It knows the body of the car and the tools of the
 * shop. Loads and heights are reckoned in cornerbook.core.lift.
 */
@NullMarked
package cornerbook.core.lift.judge;

import org.jspecify.annotations.NullMarked;
