/**
 * What the rooms of the brake share: what the maker specifies for the brake of an axle, and how pads and discs wear
 * thinner. It knows parts and measurements, and neither cars nor dates. Derivations and sources in
 * docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake;

import org.jspecify.annotations.NullMarked;
