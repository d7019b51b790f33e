/** What the book keeps of a customer, given out or erased on request; and of whom it need not keep anything any longer. */
@NullMarked
package cornerbook.app.desk.customer;

import org.jspecify.annotations.NullMarked;
