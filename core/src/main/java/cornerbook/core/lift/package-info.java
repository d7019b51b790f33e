/**
 * Whether a car can be lifted, and what each arm carries: the stack of heights under a lift point, the loads on four points
 * with parts of the car off, the margin of the centre of gravity. The vehicle maker's lift points and the hoist's plate
 * outrank every number here. Method and sources in docs/methods/lift.md.
 */
@NullMarked
package cornerbook.core.lift;

import org.jspecify.annotations.NullMarked;
