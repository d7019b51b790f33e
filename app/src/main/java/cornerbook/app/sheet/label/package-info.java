/**
 * Labels and tags on paper: of wheels, of places in the store, of racks; the rolls and sheets that they are printed on, and where on
 * them the first one goes.
 */
@NullMarked
package cornerbook.app.sheet.label;

import org.jspecify.annotations.NullMarked;
