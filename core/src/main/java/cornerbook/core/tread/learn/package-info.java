/**
 * What the wear of all cars of a book says of each: the likelihood of a wheel set's readings under wear parameters, and the
 * parameters that make those of all sets likeliest. It knows the wear model of {@code tread} and nothing of cars beyond it.
 */
@NullMarked
package cornerbook.core.tread.learn;

import org.jspecify.annotations.NullMarked;
