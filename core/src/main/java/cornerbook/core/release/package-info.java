/** Whether a car may leave: what was begun and not ended, what was found unsafe, and what closes each. */
@NullMarked
package cornerbook.core.release;

import org.jspecify.annotations.NullMarked;
