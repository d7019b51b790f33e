/**
 * What tyres cost on the road: the rubber that wears off, and the energy that their rolling resistance takes. Money is in
 * whatever coin the prices were given in; no currency is known here. Method and sources in docs/methods/cost.md.
 */
@NullMarked
package cornerbook.core.cost;

import org.jspecify.annotations.NullMarked;
