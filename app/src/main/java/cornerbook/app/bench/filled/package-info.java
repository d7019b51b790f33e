/**
 * What stands in a calculator's fields before anybody has typed: a car's own data, or an invented example. It answers no
 * question itself.
 */
@NullMarked
package cornerbook.app.bench.filled;

import org.jspecify.annotations.NullMarked;
