/**
 * On which days wheels are changed over with the least risk: from the climate of a place, the law of winter tyres and what a shop
 * can do in a day. It knows temperatures and days, and no car. Method and sources in docs/methods/changeover.md.
 */
@NullMarked
package cornerbook.core.changeover;

import org.jspecify.annotations.NullMarked;
