/** The verb that prints a bill for other programs. */
@NullMarked
package cornerbook.app.cli.bill;

import org.jspecify.annotations.NullMarked;
