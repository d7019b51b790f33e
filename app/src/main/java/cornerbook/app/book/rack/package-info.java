/**
 * The store of the shop: its racks as the shop names them, which set lies where, who laid it there or took it out, and what counts
 * found. Where a set lies stands with the set; here stand the map and the moves, to which rows are only added.
 */
@NullMarked
package cornerbook.app.book.rack;

import org.jspecify.annotations.NullMarked;
