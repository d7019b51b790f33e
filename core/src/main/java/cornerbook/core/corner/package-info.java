/**
 * The words that every feature shares: corners, axles, sides, drive layouts, seasons, and the spots at a corner. They
 * carry no computation of their own. Features meet through these words and through their own public records.
 */
@NullMarked
package cornerbook.core.corner;

import org.jspecify.annotations.NullMarked;
