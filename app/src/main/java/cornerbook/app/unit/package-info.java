/**
 * The units in which a person reads and writes: metric as the book keeps them, or US customary. Conversion itself is
 * core's; here is only which unit is meant, with how many digits, and quantities inside text.
 */
@NullMarked
package cornerbook.app.unit;

import org.jspecify.annotations.NullMarked;
