/**
 * What the law of a place asks of a shop: the taxes on its papers, how far a bill may go beyond its estimate, how long a repair is guaranteed; and whom a shop
 * may call and write to.
 * All of it is data with its source, in files that the program brings along; a place without a row has no law on file, and the shop
 * enters its own taxes.
 */
@NullMarked
package cornerbook.app.law;

import org.jspecify.annotations.NullMarked;
