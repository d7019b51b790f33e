/**
 * The shop's price list, and whose taxes its papers bear. Nothing of it is ever changed or erased: what a thing costs is said by the last
 * row that has begun, and what it cost before stays to be read.
 */
@NullMarked
package cornerbook.app.book.price;

import org.jspecify.annotations.NullMarked;
