/**
 * Brakes: what the standards ask of their parts. It knows fluids by the boiling points of their grade; pads and discs are
 * judged by the visit, against the vehicle's own limits. Source: 49 CFR 571.116.
 */
@NullMarked
package cornerbook.core.brake;

import org.jspecify.annotations.NullMarked;
