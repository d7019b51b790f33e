/**
 * The tyre as its sidewall tells it: size, load index, speed symbol, date of manufacture, and the geometry that follows.
 * It knows neither cars nor dates of visits. Method and sources in docs/methods/tyre.md.
 */
@NullMarked
package cornerbook.core.tyre;

import org.jspecify.annotations.NullMarked;
