/**
 * Brakes: fluid grades, when pads seize, what a burnish drive has to be, discs (thickness variation, runout, refinishing),
 * causes of uneven wear, and how pads and discs wear. It knows parts and measurements, and neither cars nor dates; the visit
 * judges. Derivations and sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake;

import org.jspecify.annotations.NullMarked;
