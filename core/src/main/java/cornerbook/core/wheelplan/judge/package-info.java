/**
 * Brings the wheel plan to a car: which rules its depths, sizes and drive ask for, and whether the wheels as they stand
 * differ too much. It knows wheel sets and limits. How a plan is found stands in cornerbook.core.wheelplan.search.
 */
@NullMarked
package cornerbook.core.wheelplan.judge;

import org.jspecify.annotations.NullMarked;
