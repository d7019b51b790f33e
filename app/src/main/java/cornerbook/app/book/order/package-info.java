/**
 * What cars may need by their coming visits, what the shop has ordered, and what became of each piece: it came in, went to a car,
 * or was called off. Nothing of it is ever changed or erased.
 */
@NullMarked
package cornerbook.app.book.order;

import org.jspecify.annotations.NullMarked;
