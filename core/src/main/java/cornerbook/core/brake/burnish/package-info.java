/**
 * What a drive has to be that burnishes new pads: stops, speeds and the heat of the disc. It knows masses and discs as
 * numbers. Derivations and sources in docs/methods/brakes.md.
 */
@NullMarked
package cornerbook.core.brake.burnish;

import org.jspecify.annotations.NullMarked;
