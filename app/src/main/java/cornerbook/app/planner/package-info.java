/**
 * Searches for a plan of visits by a general solver (Timefold Solver, Apache-2.0). This is its only door: nobody else in the program
 * knows the solver, and nothing of it is loaded before the first plan is asked for.
 */
@NullMarked
package cornerbook.app.planner;

import org.jspecify.annotations.NullMarked;
