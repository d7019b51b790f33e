/**
 * The corner-rate model of tread wear: posterior of depths and rates, forecast over distance, horizon. It knows tyres by
 * number and corners by place, and neither cars nor dates. Derivation in docs/methods/wear.md.
 */
@NullMarked
package cornerbook.core.tread;

import org.jspecify.annotations.NullMarked;
