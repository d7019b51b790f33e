/**
 * The pages of the calculators, with a car's own data or without, and their pictures.
 */
@NullMarked
package cornerbook.app.desk.bench;

import org.jspecify.annotations.NullMarked;
