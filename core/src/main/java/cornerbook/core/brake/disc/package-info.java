/**
 * Discs: thickness variation, refinishing, and runout of the disc apart from that of its hub. It knows measurements, and
 * neither cars nor dates. Derivations and sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.disc;

import org.jspecify.annotations.NullMarked;
