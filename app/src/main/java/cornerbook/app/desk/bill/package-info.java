/** Bills of a visit and of the shop: made of what was agreed, paid, given back, and printed. */
@NullMarked
package cornerbook.app.desk.bill;

import org.jspecify.annotations.NullMarked;
