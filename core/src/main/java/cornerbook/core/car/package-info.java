/**
 * The car as a value: the vehicle, its wheels and sets, its visits with their readings, and which reading stands. It
 * composes what the rooms declare of their parts, and judges nothing. It reads no clock and no file.
 */
@NullMarked
package cornerbook.core.car;

import org.jspecify.annotations.NullMarked;
