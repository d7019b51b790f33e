/**
 * Judges how wheels were tightened, and says when they are to be tightened again. It knows the torque that the vehicle
 * asks for. What a thread does with torque stands in cornerbook.core.torque.
 */
@NullMarked
package cornerbook.core.torque.judge;

import org.jspecify.annotations.NullMarked;
