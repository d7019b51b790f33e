/**
 * Judges tyres by what their sidewall tells: age, load and speed, the sizes of the placard, and whether a wheel fits its
 * car. It knows wheel sets and limits. What a sidewall means stands in cornerbook.core.tyre.
 */
@NullMarked
package cornerbook.core.tyre.judge;

import org.jspecify.annotations.NullMarked;
