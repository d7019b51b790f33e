/**
 * The days of the shop: what a car comes for, and how long that takes. It knows no book and no calendar of anybody. Method in
 * docs/methods/days.md.
 */
@NullMarked
package cornerbook.core.days;

import org.jspecify.annotations.NullMarked;
