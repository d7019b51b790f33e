/**
 * What the judges of the brake share: the brake of one corner as it was read, which readings it can have, how it wore
 * from visit to visit, and what differs from side to side. It knows visits and readings. Each part is judged in its own
 * room.
 */
@NullMarked
package cornerbook.core.brake.judge;

import org.jspecify.annotations.NullMarked;
