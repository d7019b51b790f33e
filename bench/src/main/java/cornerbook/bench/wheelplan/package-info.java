/**
 * How long the wheel planner takes, and the same requests given to a general-purpose solver: constraint programming over
 * integers, to its proven optimum.
 */
@NullMarked
package cornerbook.bench.wheelplan;

import org.jspecify.annotations.NullMarked;
