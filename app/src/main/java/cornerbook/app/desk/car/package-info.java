/**
 * The page of a car, and the form of its data.
 */
@NullMarked
package cornerbook.app.desk.car;

import org.jspecify.annotations.NullMarked;
