/** Finds in a car's history the grooves that were read twice with no distance between. */
@NullMarked
package cornerbook.core.reread.judge;

import org.jspecify.annotations.NullMarked;
