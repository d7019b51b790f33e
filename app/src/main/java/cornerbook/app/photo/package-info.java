/**
 * Photos as they are kept: taken in from outside within bounds, free of what a camera added, known by their digest.
 * {@link cornerbook.app.photo.PhotoIntake} is the door; a {@link cornerbook.app.photo.Jpeg} has passed it.
 */
@NullMarked
package cornerbook.app.photo;

import org.jspecify.annotations.NullMarked;
