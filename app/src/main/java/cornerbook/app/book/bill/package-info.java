/**
 * What was charged and what was paid. Numbers go up by one and have no gap: a number is taken in the transaction that keeps its bill.
 * Nothing of it is ever changed or erased; what was wrong is given back by a credit note and billed anew.
 */
@NullMarked
package cornerbook.app.book.bill;

import org.jspecify.annotations.NullMarked;
