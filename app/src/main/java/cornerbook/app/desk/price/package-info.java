/** What the shop's work and parts cost, and whose taxes its papers bear. */
@NullMarked
package cornerbook.app.desk.price;

import org.jspecify.annotations.NullMarked;
