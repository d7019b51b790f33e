/**
 * Which wheel goes to which corner. Finds the assignment that lets the set run longest, under the rules of directional
 * tyres, staggered sizes and axle differences. It knows depths and wear rates only as numbers.
 */
@NullMarked
package cornerbook.core.wheelplan;

import org.jspecify.annotations.NullMarked;
