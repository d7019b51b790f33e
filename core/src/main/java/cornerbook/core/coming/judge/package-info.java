/** By when each car is to come back, and for what, from its findings. */
@NullMarked
package cornerbook.core.coming.judge;

import org.jspecify.annotations.NullMarked;
