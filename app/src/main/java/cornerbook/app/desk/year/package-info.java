/**
 * The year in pictures, each with the list behind it: what came and comes, what the coming cars need, who was long not here, what
 * calls came to, and in which months pads stick.
 */
@NullMarked
package cornerbook.app.desk.year;

import org.jspecify.annotations.NullMarked;
