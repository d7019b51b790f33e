/**
 * The little numerical mathematics that more than one model needs: a matrix factor and the normal distribution. It knows
 * nothing of cars.
 */
@NullMarked
package cornerbook.core.numeric;

import org.jspecify.annotations.NullMarked;
