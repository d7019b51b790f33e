/**
 * When pads seize: the hazard of a pad since its guides were cleaned, learned from times of which only bounds are known.
 * It knows exposure to salt and use, and neither cars nor dates. Derivations and sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.seizing;

import org.jspecify.annotations.NullMarked;
