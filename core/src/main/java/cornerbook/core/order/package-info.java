/**
 * How many of an article a shop will need when each of its cars needs some with a chance of its own, and how many to order of it.
 * It knows no car: a need is a number of pieces and its chances. Method and sources in docs/methods/order.md.
 */
@NullMarked
package cornerbook.core.order;

import org.jspecify.annotations.NullMarked;
