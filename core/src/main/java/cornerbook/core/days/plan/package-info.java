/**
 * Visits laid on days, hoists and people: the problem, what a plan costs, a bound that no plan goes below, and why each visit stands
 * where it does. It searches for no plan itself. Method in docs/methods/planning.md.
 */
@NullMarked
package cornerbook.core.days.plan;

import org.jspecify.annotations.NullMarked;
