/**
 * What uneven pads tell: the signs, what they look like, and the causes behind them. It knows parts and measurements,
 * and neither cars nor dates. Sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.pads;

import org.jspecify.annotations.NullMarked;
