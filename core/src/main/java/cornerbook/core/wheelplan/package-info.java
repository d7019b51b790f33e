/**
 * Which wheel goes to which corner, as a question and its answer: the rules of directional tyres, staggered sizes and
 * axle differences, and the plan that lets the set run longest under them. It knows depths and wear rates only as
 * numbers. How the plan is found stands in cornerbook.core.wheelplan.search.
 */
@NullMarked
package cornerbook.core.wheelplan;

import org.jspecify.annotations.NullMarked;
