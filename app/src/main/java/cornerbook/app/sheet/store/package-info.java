/**
 * The paper that a customer gets for a set that is taken into the store.
 */
@NullMarked
package cornerbook.app.sheet.store;

import org.jspecify.annotations.NullMarked;
