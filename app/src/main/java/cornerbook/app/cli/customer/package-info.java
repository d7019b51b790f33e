/** Customers from the command line. */
@NullMarked
package cornerbook.app.cli.customer;

import org.jspecify.annotations.NullMarked;
