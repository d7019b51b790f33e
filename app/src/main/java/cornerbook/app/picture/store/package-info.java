/**
 * Pictures of the store.
 */
@NullMarked
package cornerbook.app.picture.store;

import org.jspecify.annotations.NullMarked;
