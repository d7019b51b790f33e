/**
 * The tyre as its sidewall tells it: size, load index, speed symbol, date of manufacture, and the geometry that follows.
 * Also the pressure of its air at another temperature. Method and sources in docs/methods/tyre.md.
 */
@NullMarked
package cornerbook.core.tyre;

import org.jspecify.annotations.NullMarked;
