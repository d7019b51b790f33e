/**
 * Judges distances: whether an odometer was typed wrong. It knows how far cars run, and no tyre. Method in
 * docs/methods/season.md.
 */
@NullMarked
package cornerbook.core.season.judge;

import org.jspecify.annotations.NullMarked;
