/** The verb that prints what to order. */
@NullMarked
package cornerbook.app.cli.order;

import org.jspecify.annotations.NullMarked;
