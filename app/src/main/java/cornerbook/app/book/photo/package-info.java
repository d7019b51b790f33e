/**
 * The photos of visits.
 */
@NullMarked
package cornerbook.app.book.photo;

import org.jspecify.annotations.NullMarked;
