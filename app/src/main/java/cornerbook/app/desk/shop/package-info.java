/**
 * The pages of the shop's rules and of the climate of its place.
 */
@NullMarked
package cornerbook.app.desk.shop;

import org.jspecify.annotations.NullMarked;
