/**
 * Many new cars at once, from the list that a shop has kept in a spreadsheet.
 */
@NullMarked
package cornerbook.app.desk.cars;

import org.jspecify.annotations.NullMarked;
