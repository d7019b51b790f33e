/**
 * How one person wants the pages: units, light or dark, and the order in which they walk round the car. It is kept in the
 * book by person on a paired tablet, else in the browser.
 */
@NullMarked
package cornerbook.app.preference;

import org.jspecify.annotations.NullMarked;
