/** How good plans of many visits are, and how soon: beside a bound of our own and one of a linear solver (OR-Tools). */
@NullMarked
package cornerbook.bench.days;

import org.jspecify.annotations.NullMarked;
