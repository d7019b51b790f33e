/**
 * Finds the plan: which wheel goes to which corner in each season to come. It knows depths and wear rates only as
 * numbers. What is asked and answered stands in cornerbook.core.wheelplan.
 */
@NullMarked
package cornerbook.core.wheelplan.search;

import org.jspecify.annotations.NullMarked;
