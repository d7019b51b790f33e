/**
 * The pages of what to order: how many of each article the cars that are due need, who is called about it, and what came in.
 */
@NullMarked
package cornerbook.app.desk.order;

import org.jspecify.annotations.NullMarked;
