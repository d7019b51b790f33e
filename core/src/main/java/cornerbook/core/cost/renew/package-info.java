/**
 * Two tyres or four, now or next season: what each way costs until the tyres of today are gone, with what is thrown away and
 * the visits that it may take. It knows depths, wear and prices, and no car. Method and sources in docs/methods/cost.md.
 */
@NullMarked
package cornerbook.core.cost.renew;

import org.jspecify.annotations.NullMarked;
