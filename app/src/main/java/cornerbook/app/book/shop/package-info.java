/**
 * What is the shop's own and no car's: its rules, the order of its work and the climate of its place.
 */
@NullMarked
package cornerbook.app.book.shop;

import org.jspecify.annotations.NullMarked;
