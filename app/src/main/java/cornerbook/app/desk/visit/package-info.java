/**
 * The pages on which a visit is entered: a new one, its readings, the wheels that the car leaves on, and its date and
 * odometer when they are put right.
 */
@NullMarked
package cornerbook.app.desk.visit;

import org.jspecify.annotations.NullMarked;
