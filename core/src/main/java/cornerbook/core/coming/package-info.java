/**
 * For what a customer is asked to come back, and by when. It knows no car: a matter has a day, and a purpose by which a person may
 * want to be asked or not.
 */
@NullMarked
package cornerbook.core.coming;

import org.jspecify.annotations.NullMarked;
