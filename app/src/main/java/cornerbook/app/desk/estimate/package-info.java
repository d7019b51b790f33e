/**
 * What the work of a visit would cost: a draft from its findings and the price list, the estimate that a customer was given, and what the
 * customer said to it, on a tablet of the shop, over an address in its network, or by word of mouth.
 */
@NullMarked
package cornerbook.app.desk.estimate;

import org.jspecify.annotations.NullMarked;
