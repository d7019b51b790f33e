/**
 * The days of the shop: which cars come when, and what was agreed with their customers.
 */
@NullMarked
package cornerbook.app.desk.days;

import org.jspecify.annotations.NullMarked;
