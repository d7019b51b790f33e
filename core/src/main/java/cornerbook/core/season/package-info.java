/**
 * Dates and distances of the seasons: when the next change-over falls, and how far a car runs until then. It knows no
 * tyre and no limit. Method in docs/methods/season.md.
 */
@NullMarked
package cornerbook.core.season;

import org.jspecify.annotations.NullMarked;
